import { act, waitFor } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import {
  addCombo,
  addLap,
  addLaps,
  type Change,
  deleteLap,
  editLap,
  editRun,
  LedgerFault,
  type Logbook,
  runsOfSession,
  startSession,
} from "#db";
import { useWrite } from "#live";
import { useNotices } from "#state/notices.ts";
import { useUndo } from "#state/undo.ts";
import { aLap } from "../../support/aLap.ts";
import { catchDownloads } from "../../support/downloads.ts";
import { failingStore } from "../../support/failingStore.ts";
import { hooksAt, press, said } from "../../support/hooksAt.tsx";

let mend: (() => void) | undefined;
afterEach(() => {
  mend?.();
  mend = undefined;
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

/** A page over a session of two laps, and the way to write into it. */
async function anEvening() {
  let ids = { sessionId: "", runId: "", lapId: "" };
  const page = await hooksAt(async (book) => {
    const { comboId } = await addCombo(book, {
      car: { name: "Club hatch" },
      track: { name: "Varnholt Ring" },
    });
    const { sessionId, runId } = await startSession(book, { comboId, date: "2026-11-25", zone: "UTC" });
    const lapId = book.newId();
    const laps = [84_000, 84_100].map((ms, n) => ({ id: n === 0 ? lapId : book.newId(), lap: aLap(ms) }));
    await addLaps(book, { runId, laps });
    ids = { sessionId, runId, lapId };
  });
  const { result } = page.draw(() => useWrite());
  const { book, shelf, entry } = page;
  const times = async () =>
    (await runsOfSession(book, ids.sessionId))[0]?.laps
      .filter(({ deletedAt }) => deletedAt === undefined)
      .map(({ ms }) => ms);
  const counted = async () => (await shelf.logbooks.get(entry.name))?.lapsSinceBackup;
  const lap = { runId: ids.runId, lapId: ids.lapId };
  return { ...page, ...ids, lap, times, counted, write: result.current };
}

const undo = () => act(() => useUndo.getState().undo());
const redo = () => act(() => useUndo.getState().redo());

it("gives the change, can be undone and done again, and says what was done only where that is offered", async () => {
  const { write, lap, times } = await anEvening();
  const change = await write((book) => deleteLap(book, lap));
  expect(change?.edits).toHaveLength(1);
  expect(said()).toEqual([]);
  expect(await times()).toEqual([84_100]);
  await undo();
  expect(await times()).toEqual([84_000, 84_100]);
  expect(said()).toEqual([{ kind: "done", text: "Undone: Lap 1 deleted." }]);
  await redo();
  expect(await times()).toEqual([84_100]);
});

it("offers to undo in a notice where that is asked for, in the words of the change", async () => {
  const { write, lap, times } = await anEvening();
  const change = await write((book) => deleteLap(book, lap), { isUndoOffered: true });
  expect(said()).toEqual([{ kind: "done", text: `${change?.what}.` }]);
  act(() => press("Undo"));
  await waitFor(async () => expect(await times()).toEqual([84_000, 84_100]));
});

it("offers to undo what another tab had changed meanwhile", async () => {
  const { write, lap } = await anEvening();
  await write(async (book) => ({
    ...(await editLap(book, { ...lap, patch: { ms: 84_500 } })),
    overwrote: ["time"],
  }));
  expect(said()).toMatchObject([{ kind: "done" }]);
  expect(useNotices.getState().list[0]?.actions.map(({ name }) => name)).toEqual(["Undo"]);
});

it("what was said of the act before goes when the driver goes on to the next, not when nothing was changed", async () => {
  const { write, lap } = await anEvening();
  await write((book) => deleteLap(book, lap), { isUndoOffered: true });
  const nothing: Change = { what: "Nothing done", edits: [] };
  expect(await write(async () => nothing)).toBe(nothing);
  expect(said()).toHaveLength(1);
  expect(useUndo.getState().done).toHaveLength(1);
  await write((book) => editRun(book, { runId: lap.runId, patch: { tyres: "soft" } }));
  expect(said()).toEqual([]);
});

it("counts new laps for the reminder to back up, and neither edits nor what is undone", async () => {
  const { write, runId, lap, counted } = await anEvening();
  const before = (await counted()) ?? 0;
  await write((book) => addLap(book, { runId, id: book.newId(), lap: aLap(84_200) }));
  await waitFor(async () => expect(await counted()).toBe(before + 1));
  await write((book) => editLap(book, { ...lap, patch: { ms: 84_300 } }));
  await write((book) => deleteLap(book, lap));
  await undo();
  expect(await counted()).toBe(before + 1);
});

it("laps that are stored and cannot be counted are said, and stay stored", async () => {
  const { write, runId, shelf, times } = await anEvening();
  shelf.close();
  const change = await write((book) => addLap(book, { runId, id: book.newId(), lap: aLap(84_200) }));
  expect(change?.edits).toHaveLength(1);
  await waitFor(() => expect(said()).toMatchObject([{ kind: "fault" }]));
  expect(await times()).toEqual([84_000, 84_100, 84_200]);
});

it("what fails is said, changes nothing, and can be tried again", async () => {
  const { write, lap, times } = await anEvening();
  const { mend: repair } = failingStore(1);
  mend = repair;
  expect(await write((book) => deleteLap(book, lap))).toBeUndefined();
  expect(said()).toMatchObject([{ kind: "fault", text: expect.stringContaining("no space left") }]);
  expect(useNotices.getState().list[0]?.actions.map(({ name }) => name)).toEqual([
    "Try again",
    "Save a backup",
  ]);
  expect(await times()).toEqual([84_000, 84_100]);
  expect(useUndo.getState().done).toEqual([]);
  repair();
  act(() => press("Try again"));
  await waitFor(async () => expect(await times()).toEqual([84_100]));
  await waitFor(() => expect(useUndo.getState().done).toHaveLength(1));
});

it("a backup can be saved from the notice of what failed, which is then said again", async () => {
  const { write, lap, times, entry } = await anEvening();
  const saved = catchDownloads();
  const failing = vi.fn(async (book: Logbook): Promise<Change> => {
    if (failing.mock.calls.length === 1) throw new LedgerFault("quota", "Not stored: no space.");
    return deleteLap(book, lap);
  });
  await write(failing);
  act(() => press("Save a backup"));
  await waitFor(() => expect(said()).toHaveLength(3));
  expect(saved).toHaveLength(1);
  expect(said().map(({ text }) => text)).toEqual([
    "Not stored: no space.",
    expect.stringContaining(`Lap-Ledger-${entry.title.replace(" ", "-")}`),
    "Not stored: no space.",
  ]);
  act(() => press("Try again"));
  await waitFor(async () => expect(await times()).toEqual([84_100]));
});

it("of a large write that finds no space is said how much it needs", async () => {
  const { write } = await anEvening();
  const full = async (): Promise<Change> => {
    throw new LedgerFault("quota", "Not stored: no space.");
  };
  await write(full, { bytes: () => 2_500_000 });
  expect(said()[0]?.text).toMatch(/^Not stored: no space\. Nothing was changed\. It needs about 2\.5 MB/);
  useNotices.setState({ list: [] });
  await write(full);
  expect(said()).toEqual([{ kind: "fault", text: "Not stored: no space." }]);
});

it("whoever still holds the text is told of the fault instead of the driver", async () => {
  const { write } = await anEvening();
  const fault = new LedgerFault("failed", "Not stored.");
  const onFault = vi.fn();
  const failing = async (): Promise<Change> => {
    throw fault;
  };
  expect(await write(failing, { onFault })).toBeUndefined();
  expect(onFault.mock.calls).toEqual([[fault]]);
  expect(said()).toEqual([]);
});

it("an error of the app itself is no fault of the book, and is not swallowed", async () => {
  const { write } = await anEvening();
  const failing = async (): Promise<Change> => {
    throw new TypeError("a slip");
  };
  await expect(write(failing)).rejects.toThrow("a slip");
  expect(said()).toEqual([]);
});

it("an undo that cannot be stored is said, and what was done stays done", async () => {
  const { write, lap, times } = await anEvening();
  await write((book) => deleteLap(book, lap));
  const { mend: repair } = failingStore(1);
  mend = repair;
  await undo();
  expect(said()).toMatchObject([{ kind: "fault", text: expect.stringContaining("no space left") }]);
  expect(useUndo.getState()).toMatchObject({ done: [], undone: [] });
  repair();
  expect(await times()).toEqual([84_100]);
});

it("an undo in a logbook that is closed says so", async () => {
  const { write, lap, book } = await anEvening();
  await write((one) => deleteLap(one, lap));
  vi.spyOn(book.database, "transaction").mockImplementation(() => {
    throw new LedgerFault("closed", "The logbook is closed.");
  });
  await undo();
  expect(said()).toEqual([{ kind: "fault", text: expect.stringContaining("The logbook is closed.") }]);
});

it("what has been changed since is left as it is when a change is undone, and named", async () => {
  const { write, lap, book, times, clock } = await anEvening();
  await write((one) => editLap(one, { ...lap, patch: { ms: 84_300 } }));
  clock.pass(1000);
  await editLap(book, { ...lap, patch: { ms: 84_400 } });
  await undo();
  expect(await times()).toEqual([84_400, 84_100]);
  expect(said()[0]?.text).toMatch(/\. Left as it is: .+\.$/);
});

it("an undo that is asked for while a write is under way undoes that one", async () => {
  const { write, lap, times } = await anEvening();
  let letGo: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  const slow = async (book: Logbook) => {
    const change = await deleteLap(book, lap);
    await held;
    return change;
  };
  const writing = write(slow);
  const undone = useUndo.getState().undo();
  letGo();
  await writing;
  await undone;
  expect(await times()).toEqual([84_000, 84_100]);
});
