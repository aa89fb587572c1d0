import { type AllRows, everyTable, type Id, type Stamped, type TableName, tableNames } from "#domain";
import { type Homes, linkFault } from "./linkFault.ts";

/** Ids of rows and laps that are there already, table by table. */
export type KnownIds = { readonly [T in TableName | "laps"]: ReadonlySet<Id> };

/** The ids of rows, table by table, and of their laps. */
export function idsOf(rows: AllRows): KnownIds {
  const idsIn = (all: readonly Stamped[]) => new Set(all.map(({ id }) => id));
  return { ...everyTable((table) => idsIn(rows[table])), laps: idsIn(rows.runs.flatMap(({ laps }) => laps)) };
}

/**
 * Leaves out of well-formed rows those that do not fit together, or to those known: see `linkFault`.
 * @param leaveOut told of each row that is left out
 */
export function linkedRows(
  rows: AllRows,
  known: KnownIds,
  leaveOut: (table: TableName, row: Stamped, why: string) => void,
): AllRows {
  const homes = homesOf(rows, known);
  const there = everyTable((table) => new Set<Id>(known[table]));
  // Parents stand before their children in the order of tables, so one pass is enough.
  return everyTable((table) =>
    (rows[table] as readonly Stamped[]).filter((row) => {
      const why = linkFault(table, row, homes, (to, id) => there[to].has(id))?.why;
      if (why !== undefined) leaveOut(table, row, why);
      else there[table].add(row.id);
      return why === undefined;
    }),
  ) as unknown as AllRows;
}

/** Where each id stands; one that stands in two tables is at home in the first of them. */
function homesOf(rows: AllRows, known: KnownIds): Homes {
  const homes = new Map<Id, TableName | "laps">();
  const enter = (id: Id, home: TableName | "laps") => {
    if (!homes.has(id)) homes.set(id, home);
  };
  for (const table of [...tableNames, "laps"] as const) for (const id of known[table]) enter(id, table);
  for (const table of tableNames) for (const { id } of rows[table]) enter(id, table);
  for (const { laps } of rows.runs) for (const { id } of laps) enter(id, "laps");
  return homes;
}
