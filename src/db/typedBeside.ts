import { type AllRows, type Id, type Lap, type Run, type Stamped, type TableName, tableNames } from "#domain";
import { partOf } from "./partOf.ts";

/** What was typed into a logbook besides the rows it came with. */
export interface TypedBeside {
  /** What was typed, with what it hangs on, and nothing else: whole in itself. */
  readonly part: AllRows;
  /** Laps typed, by the session they are in. */
  readonly laps: ReadonlyMap<Id, number>;
  /** Other things typed: sessions without laps, runs written as a whole, targets, rig settings. */
  readonly others: number;
  /** Rows and laps it came with that were changed since. */
  readonly changed: number;
}

/** Rows the app writes by itself, and choices: nothing that was typed. */
const byItself: readonly TableName[] = ["preferences", "forecasts"];
/** Names that others hang on; they are told by what hangs on them. */
const names: readonly TableName[] = ["cars", "tracks", "layouts", "combos"];

const isLive = ({ deletedAt }: Stamped) => deletedAt === undefined;

/**
 * Tells what was typed into a logbook apart from the rows it came with; what is deleted is left out. Rig settings and rig
 * tests that it came with stay behind, also where a run names them: they are not the driver's. Pure.
 * @param came the rows the logbook came with
 */
export function typedBeside(rows: AllRows, came: AllRows): TypedBeside {
  const stamps = stampsOf(came);
  const isNew = ({ id }: Stamped) => !stamps.has(id);
  const isTypedLap = (lap: Lap) => isNew(lap) && isLive(lap);
  const isChanged = (row: Stamped) => !isNew(row) && isLive(row) && stamps.get(row.id) !== row.updatedAt;
  // A run begun and left empty was pressed, not typed.
  const isTyped = (table: TableName, row: Stamped) =>
    table === "runs"
      ? (row as Run).laps.some(isTypedLap) || (isNew(row) && isWhole(row as Run))
      : isNew(row) && !byItself.includes(table);

  const live = tableNames.flatMap((table) =>
    (rows[table] as readonly Stamped[]).filter(isLive).map((row) => ({ table, row })),
  );
  const typed = live.filter(({ table, row }) => isTyped(table, row));
  const runs = live.flatMap(({ table, row }) => (table === "runs" ? [row as Run] : []));
  const laps = new Map<Id, number>();
  for (const { sessionId, laps: all } of runs) {
    const count = all.filter(isTypedLap).length;
    if (count > 0) laps.set(sessionId, (laps.get(sessionId) ?? 0) + count);
  }
  const isTold = (table: TableName, row: Stamped) =>
    names.includes(table) || laps.has(row.id) || (table === "runs" && !(isNew(row) && isWhole(row as Run)));
  const ids = new Set(typed.map(({ row }) => row.id));
  for (const { id, targetId } of rows.forecasts) if (ids.has(targetId)) ids.add(id);
  return {
    part: withoutRest(partOf(rows, { kind: "rows", ids }), isNew, isTypedLap),
    laps,
    others: typed.filter(({ table, row }) => !isTold(table, row)).length,
    changed:
      live.filter(({ table, row }) => table !== "preferences" && isChanged(row)).length +
      runs.flatMap((run) => run.laps.filter(isChanged)).length,
  };
}

/** When each row and lap was last changed. */
function stampsOf(rows: AllRows): ReadonlyMap<Id, number> {
  const all = [
    ...tableNames.flatMap((table) => rows[table] as readonly Stamped[]),
    ...rows.runs.flatMap((run) => run.laps as readonly Stamped[]),
  ];
  return new Map(all.map(({ id, updatedAt }) => [id, updatedAt]));
}

/** Something of the run was written besides laps. */
function isWhole({ summary, note, counts = [] }: Run): boolean {
  return summary !== undefined || note !== "" || counts.length > 0;
}

/** Without the laps of others, their rig tests, and those of their rig settings that no test compares. */
function withoutRest(
  part: AllRows,
  isNew: (row: Stamped) => boolean,
  isTypedLap: (lap: Lap) => boolean,
): AllRows {
  const rigTests = part.rigTests.filter(isNew);
  const tests = new Set(rigTests.map(({ id }) => id));
  const compared = new Set(rigTests.flatMap(({ rigA, rigB }) => [rigA, rigB]));
  const rigs = part.rigs.filter((rig) => isNew(rig) || compared.has(rig.id));
  const kept = new Set(rigs.map(({ id }) => id));
  const runs = part.runs.map(({ rigId, rigTest, ...run }) => ({
    ...run,
    ...(rigId !== undefined && kept.has(rigId) && { rigId }),
    ...(rigTest !== undefined && tests.has(rigTest.id) && { rigTest }),
    laps: run.laps.filter(isTypedLap),
  }));
  return { ...part, rigs, runs, rigTests };
}
