import {
  type AllRows,
  everyTable,
  type Id,
  type Lap,
  type Run,
  type Stamped,
  type TableName,
  tableNames,
} from "#domain";
import { linksOf } from "./checks/rowsNamed.ts";
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
  const bare = (rows: readonly Run[]): Run[] => rows.map((run) => bareIn("runs", run));
  const rows = everyTable((table) =>
    table === "runs"
      ? back<Stamped>(bare(now.runs), bare(before.runs), bare(after.runs), "a row", skipped)
      : back<Stamped>(now[table], before[table], after[table], "a row", skipped),
  ) as unknown as { [T in keyof AllRows]: Stamped[] };
  const laps = back(placed(now.runs), placed(before.runs), placed(after.runs), "a lap", skipped);

  const needed = new Set<Id>(laps.map(({ runId }) => runId));
  if (bringNeeded(rows, needed, now, before)) skipped.add("something that is in use by now");

  const lapsOf = new Map<Id, Lap[]>();
  for (const { runId, ...lap } of laps) lapsOf.set(runId, [...(lapsOf.get(runId) ?? []), lap]);
  const runs = (rows.runs as Run[]).map((run) => ({
    ...run,
    laps: (lapsOf.get(run.id) ?? []).sort((a, b) => a.n - b.n || (a.id < b.id ? -1 : 1)),
  }));
  return { rows: { ...rows, runs } as unknown as AllRows, skipped: [...skipped] };
}

/**
 * Puts back the rows that others need. What stays and was not so before needs what it hangs on; children are seen before
 * their parents, rigs in a second round. True when there were any.
 */
function bringNeeded(
  rows: { readonly [T in TableName]: Stamped[] },
  needed: Set<Id>,
  now: AllRows,
  before: AllRows,
): boolean {
  const was = new Map(tableNames.flatMap((table) => before[table].map((row) => [row.id, row] as const)));
  const present = new Set<Id>(tableNames.flatMap((table) => rows[table].map(({ id }) => id)));
  let isAny = false;
  const isAsBefore = (table: TableName, row: Stamped) => {
    const old = was.get(row.id);
    return old !== undefined && isSame(bareIn<Stamped>(table, old), row);
  };
  for (const _ of [1, 2])
    for (const table of tableNames.toReversed()) {
      for (const row of now[table] as readonly Stamped[])
        if (needed.has(row.id) && !present.has(row.id)) {
          rows[table].push(bareIn(table, row));
          present.add(row.id);
          isAny = true;
        }
      for (const row of rows[table])
        if (!isAsBefore(table, row)) for (const id of linksOf(table, row)) needed.add(id);
    }
  return isAny;
}

/** A run without its laps, which are taken back by themselves; any other row as it is. */
const bareIn = <R extends Stamped>(table: TableName, row: R): R =>
  table === "runs" ? { ...row, laps: [] } : row;

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
