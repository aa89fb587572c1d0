import "fake-indexeddb/auto";

import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addLap,
  addRun,
  type Change,
  deleteLap,
  deleteRun,
  deleteSession,
  dump,
  editLap,
  editRun,
  editSession,
  endSession,
  type Logbook,
  moveLaps,
  reopenSession,
  sessionOf,
  undoChange,
} from "#db";
import { type AllRows, canonicalText, lapsInOrder, type Stamped } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

/** What a driver sees: live rows without stamps, laps in order. */
function seen(rows: AllRows): string {
  const bare = ({ createdAt: _, updatedAt: __, had: ___, ...rest }: Stamped) => rest;
  return canonicalText({
    sessions: rows.sessions.filter(({ deletedAt }) => deletedAt === undefined).map(bare),
    runs: rows.runs
      .filter(({ deletedAt }) => deletedAt === undefined)
      .map((run) => ({ ...bare(run), laps: lapsInOrder(run).map(bare) })),
  });
}

type Pick = (items: readonly string[]) => string;
type Step = (book: Logbook, rows: AllRows, pick: Pick, sessionId: string) => Promise<Change | undefined>;

const liveRuns = (rows: AllRows) => rows.runs.filter(({ deletedAt }) => deletedAt === undefined);
const aRun = (rows: AllRows, pick: Pick) => pick(liveRuns(rows).map(({ id }) => id));
const placeOf = (rows: AllRows, pick: Pick) => {
  const places = liveRuns(rows).flatMap((run) => lapsInOrder(run).map((lap) => `${run.id} ${lap.id}`));
  const [runId, lapId] = pick(places).split(" ");
  return runId && lapId ? { runId, lapId } : undefined;
};

const steps: readonly Step[] = [
  async (book, rows, pick) => {
    const runId = aRun(rows, pick);
    return runId === "" ? undefined : addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
  },
  async (book, rows, pick) => {
    const place = placeOf(rows, pick);
    return place && editLap(book, { ...place, patch: { ms: 84000, note: "late" } });
  },
  async (book, rows, pick) => {
    const place = placeOf(rows, pick);
    return place && deleteLap(book, place);
  },
  async (book, rows, pick) => {
    const place = placeOf(rows, pick);
    return (
      place && moveLaps(book, { from: place.runId, lapIds: [place.lapId], to: { runId: aRun(rows, pick) } })
    );
  },
  async (book, rows, pick, sessionId) => {
    const place = placeOf(rows, pick);
    return place && moveLaps(book, { from: place.runId, lapIds: [place.lapId], to: { newRunIn: sessionId } });
  },
  async (book, _, __, sessionId) => addRun(book, { sessionId, settings: { tyres: "soft" } }),
  async (book, rows, pick) => {
    const runId = aRun(rows, pick);
    return runId === "" ? undefined : editRun(book, { runId, patch: { note: "x", tyres: undefined } });
  },
  async (book, rows, pick) => {
    const runId = aRun(rows, pick);
    return runId === "" ? undefined : deleteRun(book, { runId });
  },
  async (book, _, __, sessionId) => endSession(book, { sessionId }),
  async (book, _, __, sessionId) => reopenSession(book, { sessionId }),
  async (book, _, __, sessionId) => editSession(book, { sessionId, patch: { focus: "kerbs" } }),
];

test("whatever was done, undoing it backwards shows every state before again, and redoing every state after", async () => {
  const step = fc.tuple(fc.nat(steps.length - 1), fc.nat(50));
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 8 }), async (history) => {
      const { book, sessionId } = await anOpenSession();
      const states = [seen(await dump(book))];
      const changes: Change[] = [];
      for (const [kind, choice] of history) {
        const pick: Pick = (items) => items[choice % Math.max(1, items.length)] ?? "";
        const change = await steps[kind]?.(book, await dump(book), pick, sessionId);
        if (change === undefined) continue;
        changes.push(change);
        states.push(seen(await dump(book)));
      }
      const undone: Change[] = [];
      for (const [index, change] of [...changes.entries()].reverse()) {
        const back = await undoChange(book, change);
        expect(back.skipped).toEqual([]);
        expect(seen(await dump(book))).toBe(states[index]);
        undone.push(back);
      }
      for (const [index, change] of undone.reverse().entries()) {
        await undoChange(book, change);
        expect(seen(await dump(book))).toBe(states[index + 1]);
      }
      book.close();
    }),
    { seed: 4, numRuns: 60 },
  );
}, 60_000);

test("undo leaves the fields somebody changed since, and puts back the others", async () => {
  const { book, sessionId } = await anOpenSession();
  const change = await editSession(book, { sessionId, patch: { focus: "kerbs", note: "one" } });
  await editSession(book, { sessionId, patch: { note: "two" } });
  const undone = await undoChange(book, change);
  expect(undone.skipped).toEqual(["the session has been changed again since"]);
  expect(await sessionOf(book, sessionId)).toMatchObject({ focus: "free", note: "two" });
});

test("undoing a deleted session twice says so the second time", async () => {
  const { book, sessionId } = await anOpenSession();
  const change = await deleteSession(book, { sessionId });
  expect((await undoChange(book, change)).skipped).toEqual([]);
  const second = await undoChange(book, change);
  expect(second.edits).toEqual([]);
  expect(second.skipped.length).toBeGreaterThan(0);
});

test("a run begun by mistake that has laps by now stays the only open one when its begin is undone", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_000) });
  const begun = await addRun(book, { sessionId });
  await addLap(book, { runId: begun.runId, id: book.newId(), lap: aLap(84_000) });
  const undone = await undoChange(book, begun);
  expect(undone.skipped).toEqual(["the run has laps added since"]);
  const { runs } = await dump(book);
  expect(runs.filter(({ endedAt }) => endedAt === undefined).map(({ id }) => id)).toEqual([begun.runId]);
});

test("a run begun by mistake goes, and the one before is open again", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_000) });
  await undoChange(book, await addRun(book, { sessionId }));
  const { runs } = await dump(book);
  expect(runs.filter((run) => run.endedAt === undefined && run.deletedAt === undefined)).toEqual([
    expect.objectContaining({ id: runId }),
  ]);
});
