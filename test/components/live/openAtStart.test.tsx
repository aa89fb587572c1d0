import { act, render, screen, waitFor } from "@testing-library/react";
import { expect, it, vi } from "vitest";
import {
  addCombo,
  addLap,
  createLogbook,
  deleteDatabase,
  deleteSession,
  LedgerFault,
  type Logbook,
  listLogbooks,
  openLogbook,
  openShelf,
  startSession,
} from "#db";
import { asideRow } from "#domain";
import {
  type Asked,
  askHere,
  browserSurroundings,
  followRows,
  LogbookProvider,
  type Opened,
  openAtStart,
  sendHere,
  useLogbook,
} from "#live";
import { useDevice } from "#state/device.ts";
import { useOpening } from "#state/opening.ts";
import { useUndo } from "#state/undo.ts";
import { aLap } from "../../support/aLap.ts";
import { putRaw } from "../../support/damage.ts";
import { freshBrowser } from "../../support/freshBrowser.ts";

const at = Date.UTC(2026, 10, 25, 18);
const noMarkers = { markers: {} };

/** A session with a lap, which is deleted again where that is asked for. */
async function anEvening(book: Logbook, isDeleted = false) {
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const { sessionId, runId } = await startSession(book, { comboId, date: "2026-11-25", zone: "UTC" });
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  if (isDeleted) await deleteSession(book, { sessionId });
}

/** A browser with "My logbook", and the way to open what is in it as at the start of the page. */
async function aBrowser(fill: (book: Logbook) => Promise<unknown> = async () => undefined) {
  const browser = await freshBrowser(fill, at);
  const { surroundings, entry } = browser;
  const onShelf = async <T,>(work: (shelf: Opened["shelf"]) => Promise<T>) => {
    const shelf = await openShelf(surroundings);
    return work(shelf).finally(() => shelf.close());
  };
  const open = async (device: Parameters<typeof openAtStart>[1] = noMarkers, options = {}) => {
    const opened = await openAtStart(surroundings, device, options);
    opened.book.close();
    opened.shelf.close();
    return opened.entry;
  };
  const marker = (sessions: number, lastBackupAt?: number) =>
    ({ sessions, ...(lastBackupAt !== undefined && { lastBackupAt }) }) as never;
  return { ...browser, name: entry.name, onShelf, open, marker };
}

it("opens the logbook asked for, else the one this device opened last, else the one opened last of all", async () => {
  const { open, onShelf, name } = await aBrowser();
  const other = await onShelf((shelf) => createLogbook(shelf, { title: "Winter" }));
  const third = await onShelf((shelf) => createLogbook(shelf, { title: "Spring" }));
  expect((await open({ ...noMarkers, logbook: other.name })).name).toBe(other.name);
  expect((await open({ ...noMarkers, logbook: other.name }, { name })).name).toBe(name);
  expect((await open({ ...noMarkers, logbook: third.name })).name).toBe(third.name);
  expect((await open({ ...noMarkers, logbook: "no-such-book" })).name).toBe(third.name);
});

it("makes the first logbook where there is none, and notes the days on which one was opened", async () => {
  const { surroundings, onShelf, open, name, clock } = await aBrowser();
  await onShelf((shelf) => shelf.logbooks.delete(name));
  const entry = await open();
  expect(entry).toMatchObject({ title: "My logbook", kind: "own" });
  const days = async () => (await onShelf(listLogbooks)).map(({ openedOn }) => openedOn);
  expect(await days()).toEqual([["2026-11-25"]]);
  // 3:30 in Berlin is still the evening before; 4:00 is a new day.
  clock.set(Date.parse("2026-11-26T02:59:59Z"));
  await open();
  expect(await days()).toEqual([["2026-11-25"]]);
  clock.set(Date.parse("2026-11-26T03:00:00Z"));
  await open();
  expect(await days()).toEqual([["2026-11-25", "2026-11-26"]]);
  expect(surroundings.zone()).toBe("Europe/Berlin");
});

it("an empty shelf on a device that remembers sessions is a logbook lost, with the day of its last backup", async () => {
  const { onShelf, open, name, marker } = await aBrowser();
  await onShelf((shelf) => shelf.logbooks.delete(name));
  const lost = (markers: Record<string, never>) => open({ markers });
  await expect(lost({ a: marker(3) })).rejects.toMatchObject({
    code: "gone",
    message:
      "The logbook that was kept here has disappeared from this browser, perhaps because site data were cleared. " +
      "No backup of it was ever saved from here; one sent to another device would do. Restore a backup, or begin afresh.",
  });
  const backups = { a: marker(0, Date.UTC(2026, 10, 3)), b: marker(3, Date.UTC(2026, 9, 14, 23)) };
  await expect(lost(backups)).rejects.toThrow("The last backup was saved on Tue 3 Nov 2026.");
  // A backup of years to come was dated by a wrong clock.
  await expect(
    lost({ a: marker(3, Date.UTC(2036, 0, 1)), b: marker(0, Date.UTC(2026, 9, 14, 23)) }),
  ).rejects.toThrow("The last backup was saved on Thu 15 Oct 2026.");
  expect((await lost({ a: marker(0) })).title).toBe("My logbook");
});

it("a logbook that has disappeared from under its entry is lost, and no empty one takes its place", async () => {
  const { open, name, marker, onShelf } = await aBrowser(anEvening);
  await open();
  await deleteDatabase(name);
  const markers = { [name]: marker(1, Date.UTC(2026, 10, 3)), other: marker(9, Date.UTC(2026, 10, 20)) };
  await expect(open({ logbook: name, markers })).rejects.toMatchObject({
    code: "gone",
    message: expect.stringContaining("The last backup was saved on Tue 3 Nov 2026."),
  });
  expect((await indexedDB.databases()).map((one) => one.name)).not.toContain(name);
  expect(await onShelf((shelf) => shelf.logbooks.count())).toBe(1);
});

it("a logbook that is empty although this device remembers sessions in it is lost as well", async () => {
  const { open, name, marker } = await aBrowser();
  const entry = await open({ logbook: name, markers: { [name]: marker(0) } });
  expect(entry.name).toBe(name);
  const saved = marker(2, Date.UTC(2026, 10, 3));
  await expect(open({ logbook: name, markers: { [name]: saved } })).rejects.toMatchObject({
    code: "gone",
    message: expect.stringContaining("The last backup was saved on Tue 3 Nov 2026."),
  });
  expect((await open({ logbook: name, markers: { other: marker(2) } })).name).toBe(name);
});

it("one whose only session was set aside a moment before the page was closed is not lost", async () => {
  const { open, name, marker } = await aBrowser();
  await open();
  await putRaw(name, "aside", asideRow("sessions", { id: "s1" }, "date: missing", 3));
  expect((await open({ logbook: name, markers: { [name]: marker(1) } })).name).toBe(name);
});

it("one whose only session was deleted is not empty", async () => {
  const { open, name, marker } = await aBrowser((book) => anEvening(book, true));
  expect((await open({ logbook: name, markers: { [name]: marker(1) } })).name).toBe(name);
});

it("what fails otherwise is the fault it is, and leaves nothing open", async () => {
  const { open, name } = await aBrowser();
  const database = await new Promise<IDBDatabase>((resolve) => {
    const request = indexedDB.open(name, 99_990);
    request.onsuccess = () => resolve(request.result);
  });
  database.close();
  await expect(open()).rejects.toMatchObject({ code: "newer" });
});

it("a tab that opens makes up for one that stored something and crashed before it told the others", async () => {
  const { open, name, surroundings } = await aBrowser(anEvening);
  const book = await openLogbook({ name, ...surroundings });
  const notes: (string | undefined)[] = [];
  // Where Dexie tells the other tabs what has changed.
  const others = new BroadcastChannel("x-storagemutated-1");
  const heard = vi.fn();
  others.onmessage = ({ data }) => heard(data);
  const session = await book.tables.sessions.toCollection().first();
  const end = followRows(
    () => book.tables.sessions.get(session?.id ?? ""),
    (row) => notes.push(row?.note),
  );
  await waitFor(() => expect(notes).toEqual([""]));
  await putRaw(name, "sessions", { ...session, note: "windy" });
  await act(async () => undefined);
  expect(notes).toEqual([""]);
  await open({ ...noMarkers, logbook: name });
  await waitFor(() => expect(notes.at(-1)).toBe("windy"));
  await waitFor(() =>
    expect(heard).toHaveBeenCalledWith(expect.objectContaining({ all: expect.anything() })),
  );
  others.close();
  end();
  book.close();
});

it("the browser's own surroundings are its clock, its zone, ids that sort by time, and the tab", async () => {
  vi.spyOn(Intl.DateTimeFormat.prototype, "resolvedOptions").mockReturnValue({
    timeZone: "Pacific/Auckland",
  } as Intl.ResolvedDateTimeFormatOptions);
  const { clock, zone, newId, tab } = browserSurroundings();
  expect(Math.abs(clock() - Date.now())).toBeLessThan(1000);
  expect(zone()).toBe("Pacific/Auckland");
  vi.restoreAllMocks();
  const ids = [newId(), newId(), newId()];
  expect(ids.toSorted()).toEqual(ids);
  expect(new Set(ids).size).toBe(3);
  expect(await tab.id).toMatch(/^[0-9a-f-]{36}$/);
});

/** The page around an open logbook, and what its parts are handed. */
async function aPage(begin?: () => Promise<Opened>) {
  const browser = await aBrowser();
  const { surroundings } = browser;
  const sendOut = sendHere(surroundings);
  const handed: ReturnType<typeof useLogbook>[] = [];
  function Part() {
    const open = useLogbook();
    handed.push(open);
    return <p>Open: {open.entry.title}</p>;
  }
  const asks: Asked[] = [];
  const draw = (begun: Promise<Opened>) => (
    <LogbookProvider
      opening={begun}
      surroundings={surroundings}
      ask={askHere}
      sendOut={sendOut}
      waiting={<p>Opening</p>}
      sayFault={(fault, asked) => {
        asks.push(asked);
        return (
          <p role="alert">
            {fault.code}: {fault.message}
          </p>
        );
      }}
    >
      <Part />
    </LogbookProvider>
  );
  const begun = begin?.() ?? openAtStart(surroundings, useDevice.getState());
  const page = render(draw(begun));
  return { ...browser, sendOut, handed, asks, draw, ...page };
}

it("shows that it waits, then hands the logbook to all parts, and remembers it on this device", async () => {
  useDevice.setState({ logbook: undefined as never });
  const { handed, name, surroundings, sendOut } = await aPage();
  expect(screen.getByText("Opening")).toBeVisible();
  expect(await screen.findByText("Open: My logbook")).toBeVisible();
  expect(screen.queryByText("Opening")).toBeNull();
  expect(handed.at(-1)).toMatchObject({ entry: { name }, surroundings, ask: askHere, sendOut });
  expect(useDevice.getState().logbook).toBe(name);
});

it("another logbook takes the place of the open one, which is closed, with nothing left to undo", async () => {
  const { handed, onShelf, name } = await aPage();
  await screen.findByText("Open: My logbook");
  const winter = await onShelf((shelf) => createLogbook(shelf, { title: "Winter" }));
  const before = handed.at(-1);
  useUndo.getState().push({ what: "Lap deleted", takeBack: async () => undefined });
  act(() => before?.openOther(winter.name));
  expect(screen.getByText("Opening")).toBeVisible();
  expect(await screen.findByText("Open: Winter")).toBeVisible();
  expect(useDevice.getState().logbook).toBe(winter.name);
  expect(useUndo.getState().done).toEqual([]);
  await expect(before?.book.tables.sessions.count()).rejects.toThrow();
  await expect(before?.shelf.logbooks.count()).rejects.toThrow();
  // Whoever kept the older way, such as a notice, still closes what is open now.
  const second = handed.at(-1);
  act(() => before?.openOther(name));
  expect(await screen.findByText("Open: My logbook")).toBeVisible();
  await expect(second?.book.tables.sessions.count()).rejects.toThrow();
});

it("says what went wrong and what was asked for, and the way to try again or another", async () => {
  const { asks, name, onShelf, surroundings } = await aPage(() =>
    Promise.reject(new LedgerFault("refused", "Site data are not allowed.")),
  );
  expect(await screen.findByRole("alert")).toHaveTextContent("refused: Site data are not allowed.");
  expect(asks.at(-1)?.name).toBeUndefined();
  const gone = await onShelf((shelf) => createLogbook(shelf, { title: "Gone" }));
  await onShelf((shelf) => shelf.logbooks.update(gone.name, { openedOn: ["2026-11-01"] }));
  act(() => asks.at(-1)?.open(gone.name));
  expect(await screen.findByRole("alert")).toHaveTextContent(/^gone: /);
  expect(asks.at(-1)?.name).toBe(gone.name);
  act(() => asks.at(-1)?.open(name));
  expect(await screen.findByText("Open: My logbook")).toBeVisible();
  const book = await openLogbook({ name, ...surroundings });
  expect(book.status.get().kind).toBe("ok");
  book.close();
});

it("an error that is no fault of the book is said in its own words", async () => {
  await aPage(() => Promise.reject(new TypeError("a slip")));
  expect(await screen.findByRole("alert")).toHaveTextContent("failed: TypeError: a slip");
});

it("a page that is gone before its logbook is open hears no more of it", async () => {
  let settle: (opened: Opened) => void = () => undefined;
  const { unmount, name } = await aPage(
    () =>
      new Promise<Opened>((resolve) => {
        settle = resolve;
      }),
  );
  unmount();
  useDevice.setState({ logbook: "another" });
  settle({ entry: { name } } as Opened);
  await act(async () => undefined);
  expect(useDevice.getState().logbook).toBe("another");
});

it("while another tab holds an older version open, the page knows that it waits for that", async () => {
  const { name, surroundings } = await aBrowser();
  useOpening.setState({ isBlocked: false });
  await deleteDatabase(name);
  const old = await new Promise<IDBDatabase>((resolve) => {
    const request = indexedDB.open(name, 10);
    request.onupgradeneeded = () => request.result.createObjectStore("old");
    request.onsuccess = () => resolve(request.result);
  });
  const opening = openAtStart(surroundings, useDevice.getState());
  const ended = vi.fn();
  opening.then(ended, ended);
  await waitFor(() => expect(useOpening.getState().isBlocked).toBe(true));
  old.close();
  await waitFor(() => expect(ended).toHaveBeenCalled());
  useOpening.setState({ isBlocked: false });
});
