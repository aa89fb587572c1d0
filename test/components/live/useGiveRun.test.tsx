import { act, waitFor } from "@testing-library/react";
import { Dexie } from "dexie";
import { expect, it, vi } from "vitest";
import { addCombo, addLaps, createLogbook, dump, type Logbook, openLogbook, startSession } from "#db";
import { useGiveRun, useShelfWrite } from "#live";
import { useUndo } from "#state/undo.ts";
import { aLap } from "../../support/aLap.ts";
import { hooksAt, press, said } from "../../support/hooksAt.tsx";

/** Two logbooks on a shelf; the open one has a run of a lap. */
async function twoLogbooks() {
  let runId = "";
  const page = await hooksAt(async (book) => {
    const { comboId } = await addCombo(book, {
      car: { name: "Club hatch" },
      track: { name: "Varnholt Ring" },
    });
    const started = await startSession(book, { comboId, date: "2026-11-25", zone: "UTC" });
    runId = started.runId;
    await addLaps(book, { runId, laps: [{ id: book.newId(), lap: aLap(84_000) }] });
  });
  const { shelf, surroundings, book, draw } = page;
  const { name } = await createLogbook(shelf, { title: "A friend's" });
  const other = await openLogbook({ name, ...surroundings });
  const laps = async (of: Logbook) =>
    (await dump(of)).runs
      .filter(({ deletedAt }) => deletedAt === undefined)
      .flatMap((run) => run.laps.map(({ ms }) => ms));
  const both = async () => ({ here: await laps(book), there: await laps(other) });
  const to = { name, title: "A friend's" };
  return { ...page, runId, other, to, both, give: draw(() => useGiveRun()).result.current };
}

it("a run goes to another logbook, and comes back, and goes again", async () => {
  const { give, runId, to, both } = await twoLogbooks();
  expect(await both()).toEqual({ here: [84_000], there: [] });
  await act(async () => expect(await give(runId, to)).toBe(true));
  expect(await both()).toEqual({ here: [], there: [84_000] });
  expect(said()).toEqual([{ kind: "done", text: "Run moved to “A friend's”." }]);
  act(() => press("Undo"));
  await waitFor(() => expect(said()).toEqual([{ kind: "done", text: "The run is back from “A friend's”." }]));
  expect(await both()).toEqual({ here: [84_000], there: [] });
  expect(useUndo.getState().undone.map(({ what }) => what)).toEqual(["Run moved to “A friend's”"]);
  await act(() => useUndo.getState().redo());
  expect(await both()).toEqual({ here: [], there: [84_000] });
  expect(useUndo.getState().done.map(({ what }) => what)).toEqual(["Run moved to “A friend's”"]);
});

it("the other logbook is closed again, and an error of the app is not swallowed", async () => {
  const { give, runId, to, book } = await twoLogbooks();
  const closing = vi.spyOn(Dexie.prototype, "close");
  await act(async () => void (await give(runId, to)));
  expect(closing.mock.contexts.map((database) => (database as Dexie).name)).toEqual([to.name]);
  closing.mockRestore();
  const reading = vi.spyOn(book.tables.runs, "get").mockImplementation(() => {
    throw new TypeError("a slip");
  });
  const writing = vi.spyOn(book.database, "transaction").mockImplementation(() => {
    throw new TypeError("a slip");
  });
  await expect(give(runId, to)).rejects.toThrow();
  reading.mockRestore();
  writing.mockRestore();
});

it("a run that cannot go stays, and that is said", async () => {
  const { give, runId, both } = await twoLogbooks();
  const nowhere = { name: "no-such-book", title: "Gone" };
  await act(async () => expect(await give(runId, nowhere)).toBe(false));
  expect(said()).toMatchObject([{ kind: "fault", text: expect.stringContaining("has disappeared") }]);
  expect(await both()).toEqual({ here: [84_000], there: [] });
  expect(useUndo.getState().done).toEqual([]);
});

it("a run that cannot come back is said, and stays where it is", async () => {
  const { give, runId, to, both, other, book } = await twoLogbooks();
  await act(async () => void (await give(runId, to)));
  const there = await both();
  book.close();
  act(() => press("Undo"));
  await waitFor(() => expect(said().at(-1)).toMatchObject({ kind: "fault" }));
  expect(there.there).toEqual([84_000]);
  expect((await dump(other)).runs.filter(({ deletedAt }) => deletedAt === undefined)).toHaveLength(1);
  expect(useUndo.getState()).toMatchObject({ done: [], undone: [] });
});

it("a change of the list of logbooks says whether it was made, and what went wrong", async () => {
  const { shelf, draw } = await hooksAt();
  const write = draw(() => useShelfWrite()).result.current;
  expect(await write((on) => createLogbook(on, { title: "Winter" }))).toBe(true);
  expect((await shelf.logbooks.toArray()).map(({ title }) => title)).toContain("Winter");
  expect(said()).toEqual([]);
  shelf.close();
  expect(await write((on) => createLogbook(on, { title: "Spring" }))).toBe(false);
  expect(said()).toMatchObject([{ kind: "fault" }]);
  await expect(write(() => Promise.reject(new TypeError("a slip")))).rejects.toThrow("a slip");
});
