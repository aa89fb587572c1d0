import { type AllRows, everyTable, type Id, type Lap, type Run, type Stamped, tableNames } from "#domain";
import { linksOf } from "./checks/parentsOf.ts";
import { isSame } from "./patch.ts";

/**
 * A logbook as it would be without a merge. Pure. A row, and inside a run a lap, that still is what the merge made of it becomes
 * what it was before, or goes; one that was changed since stays, and so does every row it hangs on.
 * @param now the rows as they are
 * @param before the rows before the merge
 * @param after the rows as the merge made them
 */
export function unmergeRows(
  now: AllRows,
  before: AllRows,
  after: AllRows,
): { readonly rows: AllRows; readonly skipped: readonly string[] } {
  const skipped = new Set<string>();
  const bare = (rows: readonly Run[]): Run[] => rows.map((run) => ({ ...run, laps: [] }));
  const rows = everyTable((table) =>
    table === "runs"
      ? back<Stamped>(bare(now.runs), bare(before.runs), bare(after.runs), "a row", skipped)
      : back<Stamped>(now[table], before[table], after[table], "a row", skipped),
  ) as unknown as { [T in keyof AllRows]: Stamped[] };
  const laps = back(placed(now.runs), placed(before.runs), placed(after.runs), "a lap", skipped);

  // What stays needs what it hangs on; children are seen before their parents, rigs by a second round.
  const wanted = new Set<Id>(laps.map(({ runId }) => runId));
  const present = new Set<Id>(tableNames.flatMap((table) => rows[table].map(({ id }) => id)));
  for (const _ of [1, 2])
    for (const table of tableNames.toReversed()) {
      for (const row of now[table] as readonly Stamped[])
        if (wanted.has(row.id) && !present.has(row.id)) {
          rows[table].push(table === "runs" ? ({ ...row, laps: [] } as Stamped) : row);
          present.add(row.id);
          skipped.add("something that is in use by now");
        }
      for (const row of rows[table]) for (const id of linksOf(table, row)) wanted.add(id);
    }

  const lapsOf = new Map<Id, Lap[]>();
  for (const { runId, ...lap } of laps) lapsOf.set(runId, [...(lapsOf.get(runId) ?? []), lap]);
  const runs = (rows.runs as Run[]).map((run) => ({
    ...run,
    laps: (lapsOf.get(run.id) ?? []).sort((a, b) => a.n - b.n || (a.id < b.id ? -1 : 1)),
  }));
  return { rows: { ...rows, runs } as unknown as AllRows, skipped: [...skipped] };
}

type PlacedLap = Lap & { readonly runId: Id };

const placed = (runs: readonly Run[]): PlacedLap[] =>
  runs.flatMap((run) => run.laps.map((lap) => ({ ...lap, runId: run.id })));

function back<R extends Stamped>(
  now: readonly R[],
  before: readonly R[],
  after: readonly R[],
  word: string,
  skipped: Set<string>,
): R[] {
  const was = new Map(before.map((row) => [row.id, row]));
  const made = new Map(after.map((row) => [row.id, row]));
  return now.flatMap((row) => {
    const [old, then] = [was.get(row.id), made.get(row.id)];
    if (then === undefined || (old !== undefined && isSame(old, then))) return [row];
    if (isSame(row, then)) return old === undefined ? [] : [old];
    skipped.add(`${word} that was changed since`);
    return [row];
  });
}
