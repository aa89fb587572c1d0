import {
  type AllRows,
  canonicalText,
  everyTable,
  type Id,
  type Lap,
  type Run,
  type Stamped,
  type TableName,
} from "#domain";
import { isSame } from "./patch.ts";

/**
 * Merges two sets of rows. Row by row the newer `updatedAt` wins, at a tie the deleted one, then the greater canonical
 * text; deleted rows are rows; a stamp from the future counts as now. Laps merge one by one, wherever their run is: a lap belongs to the
 * run its newest version is in. Pure; order, repetition and grouping of merges do not matter.
 * @param now epoch milliseconds
 */
export function mergeRows(a: AllRows, b: AllRows, now: number): AllRows {
  const merged = everyTable((table) => mergeTable([...a[table], ...b[table]], now)) as AllRows;
  return { ...merged, runs: runsWithLaps([...a.runs, ...b.runs], now) };
}

function mergeTable<R extends Stamped>(rows: readonly R[], now: number): R[] {
  const best = new Map<Id, R>();
  for (const row of rows) {
    const settled = settle(row, now);
    const known = best.get(row.id);
    if (known === undefined || isLater(settled, known)) best.set(row.id, settled);
  }
  return [...best.values()].sort(byId);
}

const byId = (a: Stamped, b: Stamped) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/** The row with stamps no later than now. */
function settle<R extends Stamped>(row: R, now: number): R {
  const { createdAt, updatedAt, deletedAt } = row;
  if (Math.max(createdAt, updatedAt, deletedAt ?? 0) <= now) return row;
  const stamps = { createdAt: Math.min(createdAt, now), updatedAt: Math.min(updatedAt, now) };
  return deletedAt === undefined
    ? { ...row, ...stamps }
    : { ...row, ...stamps, deletedAt: Math.min(deletedAt, now) };
}

function isLater<R extends Stamped>(a: R, b: R): boolean {
  if (a.updatedAt !== b.updatedAt) return a.updatedAt > b.updatedAt;
  const [isADeleted, isBDeleted] = [a.deletedAt !== undefined, b.deletedAt !== undefined];
  return isADeleted === isBDeleted ? canonicalText(a) > canonicalText(b) : isADeleted;
}

/** A lap together with the run it is in, so that both travel together. */
type PlacedLap = Lap & { readonly runId: Id };

function runsWithLaps(runs: readonly Run[], now: number): Run[] {
  const bare = mergeTable(
    runs.map((run) => ({ ...run, laps: [] as readonly Lap[] })),
    now,
  );
  const placed = runs.flatMap((run) => run.laps.map((lap): PlacedLap => ({ ...lap, runId: run.id })));
  const lapsOf = new Map<Id, Lap[]>();
  for (const { runId, ...lap } of mergeTable(placed, now)) {
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
