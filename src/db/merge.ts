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
import { isSame } from "./patch.ts";
import { isAhead, putRight, stays } from "./versions.ts";

/**
 * Merges two sets of rows. Row by row the version stays that `stays` names: one that has seen the other, else the
 * later; deleted rows are rows. Laps merge one by one, wherever their run is: a lap belongs to the run that the version
 * which stays is in. Pure, and knows no clock; order, repetition and grouping of merges do not matter.
 */
export function mergeRows(a: AllRows, b: AllRows): AllRows {
  const tables = everyTable((table) => mergeTable([...a[table], ...b[table]])) as AllRows;
  return { ...tables, runs: runsWithLaps([...a.runs, ...b.runs]) };
}

/**
 * The rows with every stamp put right that lies ahead of a clock the driver has confirmed (`putRight`). Pure.
 * @param upTo instants later than this are not believed; without it, the rows as they are
 */
export function putRowsRight(rows: AllRows, upTo: number | undefined): AllRows {
  if (upTo === undefined) return rows;
  const right = everyTable((table) => (rows[table] as readonly Stamped[]).map((row) => putRight(row, upTo)));
  const runs = rows.runs.map((run) => ({
    ...putRight(run, upTo),
    laps: run.laps.map((lap) => putRight(lap, upTo)),
  }));
  return { ...(right as unknown as AllRows), runs };
}

/**
 * What a merge makes of a logbook; `aside` holds what it brought of rows set aside. Pure.
 * @param upTo where the driver has confirmed the date: stamps later than this are put right on both sides first
 */
export function merged(here: AllRows, coming: AllRows, upTo: number | undefined): AllRows {
  const rows = mergeRows(putRowsRight(here, upTo), putRowsRight(coming, upTo));
  return coming.aside === undefined ? rows : { ...rows, aside: coming.aside };
}

/** Rows and laps stamped by a clock that stood ahead, and the latest of these stamps. */
export interface Ahead {
  readonly count: number;
  readonly newest: number;
}

/** The rows and laps that were stamped by a clock ahead of an instant; undefined when there are none. Pure. */
export function rowsAhead(rows: AllRows, upTo: number): Ahead | undefined {
  let [count, newest] = [0, 0];
  const see = (row: Stamped) => {
    if (!isAhead(row, upTo)) return;
    count += 1;
    newest = Math.max(newest, row.updatedAt, row.deletedAt ?? 0);
  };
  for (const table of tableNames) for (const row of rows[table]) see(row);
  for (const { laps } of rows.runs) laps.forEach(see);
  return count === 0 ? undefined : { count, newest };
}

function mergeTable<R extends Stamped>(rows: readonly R[]): R[] {
  const kept = new Map<Id, R>();
  for (const row of rows) {
    const known = kept.get(row.id);
    kept.set(row.id, known === undefined ? row : stays(known, row));
  }
  return [...kept.values()].sort(byId);
}

const byId = (a: Stamped, b: Stamped) => (a.id < b.id ? -1 : 1);

/** A lap together with the run it is in, so that both travel together. */
type PlacedLap = Lap & { readonly runId: Id };

function runsWithLaps(runs: readonly Run[]): Run[] {
  const bare = mergeTable(runs.map((run) => ({ ...run, laps: [] as readonly Lap[] })));
  const placed = runs.flatMap((run) => run.laps.map((lap): PlacedLap => ({ ...lap, runId: run.id })));
  const lapsOf = new Map<Id, Lap[]>();
  for (const { runId, ...lap } of mergeTable(placed)) {
    const laps = lapsOf.get(runId);
    if (laps === undefined) lapsOf.set(runId, [lap]);
    else laps.push(lap);
  }
  return bare.map((run) => {
    const laps = lapsOf.get(run.id) ?? [];
    return { ...run, laps: laps.sort((a, b) => a.n - b.n || byId(a, b)) };
  });
}

/** What a merge does to one table, in rows (for runs, their laps are counted apart). */
export interface MergeCounts {
  /** Not there before. */
  readonly added: number;
  readonly changed: number;
  /** Not deleted before, deleted after. */
  readonly deleted: number;
  /** Deleted before, not deleted after: an old copy can bring such rows back. */
  readonly broughtBack: number;
  readonly unchanged: number;
}

/** Counts what changes from one set of rows to the next, table by table and for laps. */
export function countChanges(
  before: AllRows,
  after: AllRows,
): { readonly [T in TableName | "laps"]: MergeCounts } {
  const tables = everyTable((table) =>
    table === "runs"
      ? countTable(before.runs.map(withoutLaps), after.runs.map(withoutLaps))
      : countTable(before[table], after[table]),
  );
  return { ...tables, laps: countTable(lapsIn(before.runs), lapsIn(after.runs)) };
}

const withoutLaps = (run: Run): Stamped => ({ ...run, laps: [] }) as Stamped;
const lapsIn = (runs: readonly Run[]) =>
  runs.flatMap((run) => run.laps.map((lap) => ({ ...lap, runId: run.id })));

function countTable(before: readonly Stamped[], after: readonly Stamped[]): MergeCounts {
  const old = new Map(before.map((row) => [row.id, row]));
  const counts = { added: 0, changed: 0, deleted: 0, broughtBack: 0, unchanged: 0 };
  for (const row of after) {
    const was = old.get(row.id);
    if (was === undefined) counts.added += 1;
    else if (isSame(was, row)) counts.unchanged += 1;
    else if (was.deletedAt === undefined && row.deletedAt !== undefined) counts.deleted += 1;
    else if (was.deletedAt !== undefined && row.deletedAt === undefined) counts.broughtBack += 1;
    else counts.changed += 1;
  }
  return counts;
}
