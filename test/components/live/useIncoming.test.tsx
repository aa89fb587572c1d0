import { act, waitFor } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import { dump, editLap, keptCopies, LedgerFault, type Logbook, listLogbooks, openLogbook } from "#db";
import { type SendOut, useIncoming } from "#live";
import { useDevice } from "#state/device.ts";
import { useUndo } from "#state/undo.ts";
import { mergeDeed } from "../../../src/live/mergeDeed.ts";
import { aLappedEvening, itsLap } from "../../support/aLappedEvening.ts";
import { fileOf } from "../../support/aShelvedEvening.ts";
import { hooksAt, press, said } from "../../support/hooksAt.tsx";

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

/** A page with an evening, the ways of a file into it, and a file of the evening with its lap a second faster. */
async function incoming(instead?: Parameters<typeof hooksAt>[1]) {
  const page = await hooksAt(aLappedEvening, instead);
  const { book, clock, shelf, surroundings } = page;
  const same = await fileOf(await dump(book), "From the PC");
  const rows = await dump(book);
  const faster = rows.runs.map((run) => ({
    ...run,
    laps: run.laps.map((one) => ({ ...one, ms: 82_456, updatedAt: one.updatedAt + 1000 })),
  }));
  const file = await fileOf({ ...rows, runs: faster }, "From the PC");
  clock.pass(60_000);
  const { result } = page.draw(() => useIncoming());
  const timesIn = async (of: Logbook) => (await dump(of)).runs.flatMap((run) => run.laps.map(({ ms }) => ms));
  const times = () => timesIn(book);
  const titles = async () => (await listLogbooks(shelf)).map(({ title }) => title).sort();
  const inNew = async (name: string) => {
    const other = await openLogbook({ name, ...surroundings });
    return timesIn(other).finally(() => other.close());
  };
  return { ...page, file, same, times, titles, inNew, ways: () => result.current };
}

const notOne = new Blob(["{}"]);

it("a file becomes a logbook of its own under the title in it, and is opened", async () => {
  const { ways, file, titles, openOther, inNew, times } = await incoming();
  await act(async () => expect(await ways().asNew(file, { kind: "own" })).toBe(true));
  expect(await titles()).toEqual(["From the PC", "My logbook"]);
  const [name = ""] = openOther.mock.calls[0] ?? [];
  expect(await inNew(name)).toEqual([82_456]);
  expect(await times()).toEqual([83_456]);
  expect(said()).toEqual([{ kind: "done", text: "“From the PC” is open. Your other logbooks are on Data." }]);
});

it("or under a title of the driver's, and a demo is known as one", async () => {
  const { ways, file, shelf } = await incoming();
  await act(async () => void (await ways().asNew(file, { title: "Demo", kind: "demo" })));
  expect(
    await shelf.logbooks.where({ name: (await listLogbooks(shelf))[0]?.name ?? "" }).first(),
  ).toMatchObject({
    title: "Demo",
    kind: "demo",
  });
});

it("a file that is no backup becomes nothing, and leaves no database behind", async () => {
  const { ways, titles, openOther } = await incoming();
  const before = (await indexedDB.databases()).length;
  await act(async () => expect(await ways().asNew(notOne, { kind: "own" })).toBe(false));
  expect(said()).toMatchObject([{ kind: "fault", text: expect.stringMatching(/Nothing was changed\.$/) }]);
  expect(await titles()).toEqual(["My logbook"]);
  expect(openOther).not.toHaveBeenCalled();
  expect((await indexedDB.databases()).length).toBe(before);
});

it("one that cannot be entered in the list is removed again", async () => {
  const { ways, file, titles, shelf, openOther } = await incoming();
  const before = (await indexedDB.databases()).map(({ name }) => name).sort();
  vi.spyOn(shelf.logbooks, "put").mockRejectedValue(new DOMException("full", "QuotaExceededError"));
  vi.spyOn(shelf.logbooks, "add").mockRejectedValue(new DOMException("full", "QuotaExceededError"));
  await act(async () => expect(await ways().asNew(file, { kind: "own" })).toBe(false));
  expect(said()).toMatchObject([{ kind: "fault" }]);
  expect(openOther).not.toHaveBeenCalled();
  vi.restoreAllMocks();
  expect(await titles()).toEqual(["My logbook"]);
  expect((await indexedDB.databases()).map(({ name }) => name).sort()).toEqual(before);
});

it("a file is merged in one step that can be undone", async () => {
  const { ways, file, times } = await incoming();
  await act(async () => expect(await ways().merge(file, "backup of the PC", false)).toBe(true));
  expect(await times()).toEqual([82_456]);
  expect(said()[0]?.text).toMatch(/^Merged: backup of the PC.*\. One row added or changed\.$/);
  await act(async () => press("Undo"));
  await waitFor(() => expect(said()[0]?.text).toMatch(/^Undone: Merged: backup of the PC[^:]*\.$/));
  expect(await times()).toEqual([83_456]);
  // To do it again the file is merged again.
  expect(useUndo.getState()).toMatchObject({ done: [], undone: [] });
});

it("more rows than one are counted, and a merge that brings nothing says so and cannot be undone", async () => {
  const { ways, same } = await incoming();
  await act(async () => expect(await ways().merge(same, "PC", false)).toBe(true));
  expect(said()).toEqual([{ kind: "done", text: "Nothing to merge: all of it is here already." }]);
  expect(useUndo.getState().done).toEqual([]);
  const empty = await hooksAt();
  const { result } = empty.draw(() => useIncoming());
  await act(async () => void (await result.current.merge(same, "PC", false)));
  // Car, track, layout, combo, session, run.
  expect(said()[0]?.text).toMatch(/ 6 rows added or changed\.$/);
});

it("what was changed since a merge stays when it is undone, and is named; an undo that fails is said", async () => {
  const { ways, file, book, clock, times } = await incoming();
  await act(async () => void (await ways().merge(file, "PC", false)));
  clock.pass(1000);
  await editLap(book, { ...(await itsLap(book)), patch: { ms: 81_000 } });
  await act(async () => press("Undo"));
  await waitFor(() => expect(said()[0]?.text).toMatch(/^Undone: .* Left as it is: .+\.$/));
  expect(await times()).toEqual([81_000]);
});

it("a merge that cannot be taken back says why", async () => {
  const { ways, file, shelf } = await incoming();
  await act(async () => void (await ways().merge(file, "PC", false)));
  await shelf.packs.clear();
  await act(async () => press("Undo"));
  await waitFor(() => expect(said().at(-1)).toMatchObject({ kind: "fault" }));
});

it("an error of the app in taking a merge back is not swallowed", async () => {
  const failing = mergeDeed({
    sendOut: async () => Promise.reject(new TypeError("a slip")),
    logbook: "book",
    source: new Blob(),
    done: { what: "Merged", rows: 1, mergedAt: 0, isDateConfirmed: false, copyId: "" },
  });
  await expect(failing.takeBack()).rejects.toThrow("a slip");
});

it("a merge that fails changes nothing and is no deed", async () => {
  const { ways, times } = await incoming();
  await act(async () => expect(await ways().merge(notOne, "PC", false)).toBe(false));
  expect(await times()).toEqual([83_456]);
  expect(useUndo.getState().done).toEqual([]);
});

it("a file takes the place of the open logbook, which is kept as it was", async () => {
  const { ways, file, titles, book, shelf, openOther, inNew } = await incoming();
  useDevice.getState().change({ markers: { [book.name]: { sessions: 1 }, other: { sessions: 2 } } });
  await act(async () => expect(await ways().replace(file)).toBe(true));
  expect(await titles()).toEqual(["My logbook"]);
  const [name = ""] = openOther.mock.calls[0] ?? [];
  expect(await inNew(name)).toEqual([82_456]);
  expect((await indexedDB.databases()).map((one) => one.name)).not.toContain(book.name);
  expect(useDevice.getState().markers).toEqual({ other: { sessions: 2 } });
  expect(await keptCopies(shelf, name)).toMatchObject([{ why: "replace", title: "My logbook", laps: 1 }]);
  expect(said()).toEqual([
    {
      kind: "done",
      text: "“My logbook” is replaced. As it was before, it is kept under “Earlier states” for thirty days of use.",
    },
  ]);
});

it("nothing is replaced by what is no backup, nor where the logbook cannot be kept before", async () => {
  const { ways, file, times, openOther, shelf } = await incoming();
  await act(async () => expect(await ways().replace(notOne)).toBe(false));
  expect(openOther).not.toHaveBeenCalled();
  expect(await times()).toEqual([83_456]);
  const refusing: SendOut = async () => {
    throw new LedgerFault("quota", "No space.");
  };
  const full = await incoming({ sendOut: refusing });
  await act(async () => expect(await full.ways().replace(file)).toBe(false));
  expect(full.openOther).not.toHaveBeenCalled();
  expect(await full.times()).toEqual([83_456]);
  shelf.close();
  await act(async () => expect(await ways().asNew(file, { kind: "own" })).toBe(false));
  expect(said().at(-1)).toMatchObject({ kind: "fault" });
});

it("where the logbook cannot be kept before, the file is not even read", async () => {
  const errands: string[] = [];
  const { ways, file, times } = await incoming({
    sendOut: async (_, errand) => {
      errands.push(errand);
      throw new LedgerFault("quota", "No space.");
    },
  });
  await act(async () => expect(await ways().replace(file)).toBe(false));
  expect(errands).toEqual(["keep"]);
  expect(await times()).toEqual([83_456]);
});

it("where a new database cannot be noted, none is begun", async () => {
  const sendOut = vi.fn(async () => Promise.reject(new LedgerFault("failed", "Not done.")));
  const { ways, file, shelf } = await incoming({ sendOut });
  shelf.close();
  await act(async () => expect(await ways().asNew(file, { kind: "own" })).toBe(false));
  expect(sendOut).not.toHaveBeenCalled();
  expect(said()).toHaveLength(1);
});
