import type { Change } from "#db";
import { type Lap, lapsInOrder, type Run } from "#domain";

/** Laps that a change added to the book: one that was moved, or brought back, was there before. */
export function newLaps({ edits }: Pick<Change, "edits">): number {
  const runs = edits.flatMap((edit) => (edit.table === "runs" ? [edit] : []));
  const idsOf = (rows: readonly (Run | undefined)[], lapsOf: (run: Run) => readonly Lap[]) =>
    new Set(rows.flatMap((run) => (run === undefined ? [] : lapsOf(run).map(({ id }) => id))));
  const known = idsOf(
    runs.map(({ before }) => before),
    ({ laps }) => laps,
  );
  const there = idsOf(
    runs.map(({ after }) => after),
    lapsInOrder,
  );
  return [...there].filter((id) => !known.has(id)).length;
}
