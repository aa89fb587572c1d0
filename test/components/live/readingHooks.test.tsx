import { act, renderHook, waitFor } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import {
  addCombo,
  addLap,
  defaultPreferences,
  deleteDatabase,
  deleteSession,
  editLap,
  editSession,
  keepCopy,
  type Logbook,
  noteSent,
  renameCar,
  startSession,
} from "#db";
import { noRows } from "#domain";
import {
  type Ask,
  followRows,
  useBackupFolder,
  useCombos,
  useFigures,
  useHeldRows,
  useKeptCopies,
  useLogbook,
  useNow,
  usePageBest,
  useRows,
  useSentAt,
  useSessionsInDoubt,
  useShelved,
  useShelvedNow,
  useStatus,
  useToday,
  useUnreadable,
  useUntil,
} from "#live";
import { eachMinute } from "../../../src/live/eachMinute.ts";
import { addSessions } from "../../support/addSessions.ts";
import { aLap } from "../../support/aLap.ts";
import { hooksAt } from "../../support/hooksAt.tsx";
import { pass } from "../../support/waits.ts";

afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

const laps = [84_300, 84_100, 84_200, 84_000, 84_400];
const today = "2026-11-25";

/** Two combos, the second driven last. */
async function twoCombos(book: Logbook) {
  const combo = async (car: string, date: string) => {
    const { comboId } = await addCombo(book, { car: { name: car }, track: { name: "Varnholt Ring" } });
    const [sessionId = ""] = await addSessions(book, comboId, [{ date, laps }]);
    return { comboId, sessionId };
  };
  return { hatch: await combo("Club hatch", "2026-11-20"), kart: await combo("Junior kart", "2026-11-22") };
}

async function withTwoCombos(instead: Parameters<typeof hooksAt>[1] = {}) {
  let ids: Awaited<ReturnType<typeof twoCombos>> | undefined;
  const page = await hooksAt(async (book) => {
    ids = await twoCombos(book);
  }, instead);
  if (ids === undefined) throw new Error("no combos");
  return { ...page, ...ids };
}

it("a part that is drawn outside an open logbook says so", () => {
  vi.spyOn(console, "error").mockImplementation(() => undefined);
  expect(() => renderHook(() => useLogbook())).toThrow("A part was drawn outside an open logbook.");
});

it("rows are read, and read again after every change and for another question", async () => {
  const { draw, book, hatch, kart } = await withTwoCombos();
  const { result, rerender } = draw(
    (comboId: string) => useRows((of) => of.tables.sessions.where({ comboId }).count(), [comboId]),
    hatch.comboId,
  );
  expect(result.current).toBeUndefined();
  await waitFor(() => expect(result.current).toBe(1));
  await addSessions(book, hatch.comboId, [{ date: "2026-11-23", laps }]);
  await waitFor(() => expect(result.current).toBe(2));
  rerender(kart.comboId);
  await waitFor(() => expect(result.current).toBe(1));
});

it("rows can be followed outside of drawing, until that is ended", async () => {
  const { book, hatch } = await withTwoCombos();
  const told: number[] = [];
  const end = followRows(
    () => book.tables.sessions.count(),
    (count) => told.push(count),
  );
  await waitFor(() => expect(told).toEqual([2]));
  await addSessions(book, hatch.comboId, [{ date: "2026-11-23", laps: [] }]);
  await waitFor(() => expect(told.at(-1)).toBe(3));
  end();
  const before = told.length;
  await deleteSession(book, { sessionId: hatch.sessionId });
  await addSessions(book, hatch.comboId, [{ date: "2026-11-24", laps: [] }]);
  expect(told).toHaveLength(before);
  // A read that fails tells nothing, and throws nowhere.
  followRows(
    () => Promise.reject(new Error("lost")),
    (count) => told.push(count),
  );
  await act(async () => undefined);
  expect(told).toHaveLength(before);
});

it("figures are asked for, and asked again when what they rest on has changed, the old ones standing meanwhile", async () => {
  const answers: ((value: unknown) => void)[] = [];
  const ask = vi.fn(() => new Promise<unknown>((resolve) => answers.push(resolve)));
  const { draw, book, hatch } = await withTwoCombos({ ask: ask as unknown as Ask });
  const { result } = draw(() => useFigures("acrossCombos", { today }));
  expect(result.current).toEqual({ value: undefined, isRenewing: true });
  await waitFor(() => expect(ask).toHaveBeenCalledTimes(1));
  expect(ask.mock.calls[0]).toEqual([book, "acrossCombos", { today }]);
  await act(async () => answers[0]?.("first"));
  expect(result.current).toEqual({ value: "first", isRenewing: false });
  await editSession(book, { sessionId: hatch.sessionId, patch: { note: "windy" } });
  await waitFor(() => expect(ask).toHaveBeenCalledTimes(2));
  expect(result.current).toEqual({ value: "first", isRenewing: true });
  // Overtaken by another change, an answer is not heard.
  await editSession(book, { sessionId: hatch.sessionId, patch: { note: "windier" } });
  await waitFor(() => expect(ask).toHaveBeenCalledTimes(3));
  await act(async () => answers[1]?.("second"));
  expect(result.current).toEqual({ value: "first", isRenewing: true });
  await act(async () => answers[2]?.("third"));
  expect(result.current).toEqual({ value: "third", isRenewing: false });
});

it("figures that are held are not asked for, stay through every change, and are renewed once let go", async () => {
  const ask = vi.fn(async () => `answer ${ask.mock.calls.length}`);
  const { draw, book, hatch } = await withTwoCombos({ ask: ask as unknown as Ask });
  const { result, rerender } = draw(
    (isHeld: boolean) => useFigures("acrossCombos", { today }, isHeld),
    true as boolean,
  );
  const change = async (note: string) => {
    await editSession(book, { sessionId: hatch.sessionId, patch: { note } });
    // Longer than the rest after which changed figures are asked for.
    await pass(200);
  };
  await change("windy");
  expect(result.current).toEqual({ value: undefined, isRenewing: false });
  expect(ask).not.toHaveBeenCalled();
  rerender(false);
  await waitFor(() => expect(result.current).toEqual({ value: "answer 1", isRenewing: false }));
  rerender(true);
  await change("windier");
  expect(result.current).toEqual({ value: "answer 1", isRenewing: false });
  expect(ask).toHaveBeenCalledTimes(1);
  rerender(false);
  await waitFor(() => expect(result.current).toEqual({ value: "answer 2", isRenewing: false }));
});

it("figures about something else are not those before", async () => {
  const ask = vi.fn(async (_: unknown, __: unknown, { today: day }: { today: string }) => `as of ${day}`);
  const { draw } = await withTwoCombos({ ask: ask as unknown as Ask });
  const { result, rerender } = draw(
    (day: string) => useFigures("acrossCombos", { today: day }),
    "2026-11-25" as string,
  );
  await waitFor(() => expect(result.current).toEqual({ value: "as of 2026-11-25", isRenewing: false }));
  rerender("2026-11-26");
  expect(result.current).toEqual({ value: undefined, isRenewing: true });
  await waitFor(() => expect(result.current).toEqual({ value: "as of 2026-11-26", isRenewing: false }));
});

it("figures that cannot be worked out are thrown to whoever draws around them", async () => {
  vi.spyOn(console, "error").mockImplementation(() => undefined);
  const ask = vi.fn(() => Promise.reject(new Error("not worked out")));
  const { draw } = await withTwoCombos({ ask: ask as unknown as Ask });
  let thrown: unknown;
  const { result } = draw(() => {
    try {
      return useFigures("acrossCombos", { today });
    } catch (error) {
      thrown = error;
      return undefined;
    }
  });
  await waitFor(() => expect(thrown).toMatchObject({ message: "not worked out" }));
  await waitFor(() => expect(result.current).toBeUndefined());
});

it("figures that failed for one question are not thrown for the next", async () => {
  vi.spyOn(console, "error").mockImplementation(() => undefined);
  const ask = vi.fn((_: unknown, __: unknown, { today: day }: { today: string }) =>
    day === today ? Promise.reject(new Error("not worked out")) : Promise.resolve("worked out"),
  );
  const { draw } = await withTwoCombos({ ask: ask as unknown as Ask });
  const thrown: string[] = [];
  const { result, rerender } = draw((day: string) => {
    try {
      return useFigures("acrossCombos", { today: day });
    } catch (error) {
      thrown.push(`${day}: ${String(error)}`);
      return undefined;
    }
  }, today as string);
  await waitFor(() => expect(thrown).toContain(`${today}: Error: not worked out`));
  rerender("2026-11-26");
  await waitFor(() => expect(result.current?.value).toBe("worked out"));
  expect(thrown.filter((one) => !one.startsWith(today))).toEqual([]);
});

it("combos are listed by the session driven last, then by name, and follow a new name", async () => {
  const { draw, book, hatch, kart } = await withTwoCombos();
  for (const name of ["Zonda buggy", "Alp buggy"])
    await addCombo(book, { car: { name }, track: { name: "Varnholt Ring" } });
  const { result } = draw(() => useCombos());
  await waitFor(() =>
    expect(result.current?.map(({ name }) => name)).toEqual([
      "Varnholt Ring · Junior kart",
      "Varnholt Ring · Club hatch",
      "Varnholt Ring · Alp buggy",
      "Varnholt Ring · Zonda buggy",
    ]),
  );
  expect(result.current?.map(({ id }) => id).slice(0, 2)).toEqual([kart.comboId, hatch.comboId]);
  expect(result.current?.map(({ drivenAt }) => drivenAt)).toEqual([
    Date.parse("2026-11-22T19:00:00Z"),
    Date.parse("2026-11-20T19:00:00Z"),
    undefined,
    undefined,
  ]);
  const car = (await book.tables.cars.toArray()).find(({ name }) => name === "Junior kart");
  await renameCar(book, { id: car?.id ?? "", name: "Senior kart" });
  await waitFor(() => expect(result.current?.[0]?.name).toBe("Varnholt Ring · Senior kart"));
});

it("the best lap of a page is found, without the session being driven, and is the same thing while it is the same lap", async () => {
  const { draw, book, hatch } = await withTwoCombos();
  const whole = { from: 0, to: Number.POSITIVE_INFINITY };
  const preferences = { id: "preferences", updatedAt: 0, createdAt: 0, ...defaultPreferences } as never;
  const { result, rerender } = draw(
    ({ except, span = whole }: { except?: string; span?: typeof whole }) =>
      usePageBest(hatch.comboId, span, except, preferences),
    {},
  );
  expect(result.current).toBeUndefined();
  await waitFor(() => expect(result.current?.ms).toBe(84_000));
  const first = result.current;
  // A slower session is read, and the best is still that lap.
  await addSessions(book, hatch.comboId, [{ date: "2026-11-23", laps: [85_000] }]);
  await act(() => new Promise((done) => setTimeout(done, 50)));
  expect(result.current).toBe(first);
  await addSessions(book, hatch.comboId, [{ date: "2026-11-24", laps: [83_500] }]);
  await waitFor(() => expect(result.current?.ms).toBe(83_500));
  rerender({ span: { from: 0, to: Date.parse("2026-11-24T00:00:00Z") } });
  await waitFor(() => expect(result.current?.ms).toBe(84_000));
  rerender({ span: { from: 0, to: 1 } });
  await waitFor(() => expect(result.current).toBeNull());
  rerender({ except: hatch.sessionId, span: { from: 0, to: Date.parse("2026-11-24T00:00:00Z") } });
  await waitFor(() => expect(result.current?.ms).toBe(85_000));
});

it("another lap of the same time, and the same lap with its time mended, are not the best lap before", async () => {
  const { draw, book, hatch } = await withTwoCombos();
  const whole = { from: 0, to: Number.POSITIVE_INFINITY };
  const preferences = { id: "preferences", updatedAt: 0, createdAt: 0, ...defaultPreferences } as never;
  await addSessions(book, hatch.comboId, [{ date: "2026-11-23", laps: [84_000] }]);
  const { result, rerender } = draw(
    (except: string) => usePageBest(hatch.comboId, whole, except || undefined, preferences),
    "" as string,
  );
  await waitFor(() => expect(result.current?.ms).toBe(84_000));
  const first = result.current;
  rerender(hatch.sessionId);
  await waitFor(() => expect(result.current?.lapId).not.toBe(first?.lapId));
  expect(result.current?.ms).toBe(84_000);
  const lapId = result.current?.lapId ?? "";
  const run = (await book.tables.runs.toArray()).find(({ laps: own }) => own.some(({ id }) => id === lapId));
  await editLap(book, { runId: run?.id ?? "", lapId, patch: { ms: 83_900 } });
  await waitFor(() => expect(result.current).toMatchObject({ lapId, ms: 83_900 }));
});

it("a page on which only a warm-up was driven has a best only where it had one before", async () => {
  const { draw, book } = await withTwoCombos();
  const preferences = { id: "preferences", updatedAt: 0, createdAt: 0, ...defaultPreferences } as never;
  const { comboId } = await addCombo(book, { car: { name: "Van" }, track: { name: "Varnholt Ring" } });
  await addSessions(book, comboId, [{ date: "2026-11-23", laps: [84_000], kind: "warm-up" }]);
  const whole = { from: 0, to: Number.POSITIVE_INFINITY };
  const without = draw(() => usePageBest(comboId, whole, undefined, preferences)).result;
  const after = draw(() => usePageBest(comboId, whole, undefined, preferences, true)).result;
  await waitFor(() => expect(after.current?.ms).toBe(84_000));
  await waitFor(() => expect(without.current).toBeNull());
});

it("sessions whose date is in doubt are named with their address, of all combos or of one", async () => {
  const { draw, book, hatch, kart } = await withTwoCombos();
  const [ahead = ""] = await addSessions(book, hatch.comboId, [{ date: "2031-01-01", laps }]);
  const [other = ""] = await addSessions(book, kart.comboId, [{ date: "2032-01-01", laps }]);
  const { result, rerender } = draw((comboId: string | undefined) => useSessionsInDoubt(today, comboId));
  expect(result.current).toEqual([]);
  await waitFor(() => expect(result.current.map(({ id }) => id)).toEqual([ahead, other]));
  expect(result.current[0]).toMatchObject({
    date: "2031-01-01",
    doubt: "ahead",
    href: expect.stringContaining(ahead),
  });
  rerender(kart.comboId);
  await waitFor(() => expect(result.current.map(({ id }) => id)).toEqual([other]));
});

it("the time is looked at again every minute and when the page is looked at, and no more once the part has gone", async () => {
  const { draw, clock } = await hooksAt();
  vi.useFakeTimers();
  const { result, unmount } = draw(() => ({
    now: useNow(),
    day: useToday({ dayStartsAt: 4 }),
    until: useUntil(),
  }));
  const at = clock.now();
  // 25 November, 19:00 in Berlin. Tomorrow ends last where it is twelve hours behind UTC.
  expect(result.current).toEqual({ now: at, day: "2026-11-25", until: Date.parse("2026-11-27T12:00:00Z") });
  clock.pass(8 * 3_600_000);
  act(() => vi.advanceTimersByTime(59_999));
  expect(result.current.now).toBe(at);
  act(() => vi.advanceTimersByTime(1));
  // 3:00: a new day by the calendar, and still the evening before to whoever begins a day at 4.
  expect(result.current).toEqual({
    now: at + 8 * 3_600_000,
    day: "2026-11-25",
    until: Date.parse("2026-11-28T12:00:00Z"),
  });
  clock.pass(3_600_000);
  act(() => void document.dispatchEvent(new Event("visibilitychange")));
  expect(result.current).toMatchObject({ now: at + 9 * 3_600_000, day: "2026-11-26" });
  unmount();
  expect(vi.getTimerCount()).toBe(0);
});

it("a look that is ended looks no more", () => {
  vi.useFakeTimers();
  const look = vi.fn();
  const end = eachMinute(look);
  document.dispatchEvent(new Event("visibilitychange"));
  vi.advanceTimersByTime(120_000);
  expect(look).toHaveBeenCalledTimes(3);
  end();
  document.dispatchEvent(new Event("visibilitychange"));
  vi.advanceTimersByTime(120_000);
  expect(look).toHaveBeenCalledTimes(3);
});

it("how it stands with the logbook, and rows it could not read, are followed", async () => {
  const { draw, book } = await hooksAt();
  const { result } = draw(() => ({ status: useStatus(), unreadable: useUnreadable() }));
  expect(result.current).toMatchObject({ status: { kind: "ok" }, unreadable: [] });
  const row = { table: "runs", id: "r" } as const;
  act(() => book.unreadable.note([row]));
  expect(result.current.unreadable).toEqual([row]);
  // Another tab removes it.
  await act(() => deleteDatabase(book.name));
  await waitFor(() => expect(result.current.status.kind).toBe("gone"));
});

it("the list of logbooks, what was sent, the folder and the kept states are followed", async () => {
  const { draw, shelf, book, entry, clock } = await hooksAt();
  const { result } = draw(() => ({
    all: useShelved(),
    now: useShelvedNow(),
    sentAt: useSentAt(),
    folder: useBackupFolder(),
    copies: useKeptCopies(),
  }));
  expect(result.current).toEqual({
    all: undefined,
    now: entry,
    sentAt: undefined,
    folder: undefined,
    copies: undefined,
  });
  await waitFor(() =>
    expect(result.current).toMatchObject({ all: [{ title: "My logbook" }], folder: null, copies: [] }),
  );
  await shelf.logbooks.update(entry.name, { title: "Evenings" });
  await waitFor(() => expect(result.current.now.title).toBe("Evenings"));
  expect(result.current.all?.map(({ title }) => title)).toEqual(["Evenings"]);
  await noteSent(shelf, book.name, new Map());
  await waitFor(() => expect(result.current.sentAt).toBe(clock.now()));
  const copy = { logbook: book.name, title: "Evenings", why: "merge", sessions: 1, laps: 2 } as const;
  await keepCopy(shelf, { ...copy, packed: new Uint8Array([1]) });
  await waitFor(() => expect(result.current.copies).toMatchObject([copy]));
  const folder = { logbook: book.name, handle: { name: "Backups" } as never, tag: "k7", seen: {} };
  await shelf.folders.put(folder);
  await waitFor(() => expect(result.current.folder).toEqual(folder));
});

it("after a while at rest the tab holds the open session and the small tables, and keeps them when the logbook is lost", async () => {
  let sessionId = "";
  const { draw, book, hatch } = await withTwoCombos();
  ({ sessionId } = await startSession(book, { comboId: hatch.comboId, date: today, zone: "UTC" }));
  const later = vi.spyOn(globalThis, "setTimeout");
  const { result, unmount } = draw(() => useHeldRows());
  expect(result.current.current).toEqual(noRows);
  expect(later.mock.calls.map(([, ms]) => ms)).toContain(2000);
  later.mockRestore();
  await waitFor(() => expect(result.current.current.runs).toHaveLength(1), { timeout: 10_000 });
  const held = () => result.current.current;
  await waitFor(() => expect(held().combos).toHaveLength(2));
  expect(held().sessions.map(({ id }) => id)).toEqual([sessionId]);
  expect([held().cars.length, held().tracks.length, held().layouts.length]).toEqual([2, 1, 1]);
  const runId = held().runs[0]?.id ?? "";
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  await waitFor(() => expect(held().runs[0]?.laps).toHaveLength(1));
  vi.spyOn(book.status, "get").mockReturnValue({ kind: "gone" });
  const before = held();
  await book.database.table("runs").clear();
  await act(() => new Promise((done) => setTimeout(done, 50)));
  expect(held()).toBe(before);
  expect(held().runs).toHaveLength(1);
  unmount();
});
