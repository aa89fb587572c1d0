import {
  type AllRows,
  everyTable,
  type Id,
  type Run,
  type Stamped,
  type TableName,
  tableNames,
} from "#domain";
import { rowsNamed } from "./rowsNamed.ts";

/** Ids of rows that are there already, table by table. */
export type KnownIds = { readonly [T in TableName]: ReadonlySet<Id> };

/** The ids of rows, table by table; laps not among them. */
export function idsOf(rows: AllRows): KnownIds {
  return everyTable((table) => new Set((rows[table] as readonly Stamped[]).map(({ id }) => id)));
}

/**
 * Leaves out of well-formed rows those that do not fit together. An id stands in one table only, and what a row names is in
 * the right one, among these rows or those known; what it can be without may be nowhere, but not in another table.
 * @param leaveOut told of each row that is left out
 */
export function linkedRows(
  rows: AllRows,
  known: KnownIds,
  leaveOut: (table: TableName, row: Stamped, why: string) => void,
): AllRows {
  const homes = homesOf(rows, known);
  const there = everyTable((table) => new Set<Id>(known[table]));
  const whyNot = (table: TableName, row: Stamped): string | undefined => {
    if (homes.get(row.id) !== table) return "its id is that of another row";
    if (table === "runs" && (row as Run).laps.some(({ id }) => homes.get(id) !== "laps"))
      return "a lap with the id of a row";
    for (const { id, to, word, isLoose } of rowsNamed(table, row)) {
      const home = homes.get(id);
      if (home !== undefined && home !== to) return `its ${word} is a row of another table`;
      if (!isLoose && !there[to].has(id)) return `its ${word} is not there`;
    }
    return undefined;
  };
  // Parents stand before their children in the order of tables, so one pass is enough.
  return everyTable((table) =>
    (rows[table] as readonly Stamped[]).filter((row) => {
      const why = whyNot(table, row);
      if (why !== undefined) leaveOut(table, row, why);
      else there[table].add(row.id);
      return why === undefined;
    }),
  ) as unknown as AllRows;
}

/** Where each id stands; one that stands in two tables is at home in the first of them. */
function homesOf(rows: AllRows, known: KnownIds): ReadonlyMap<Id, TableName | "laps"> {
  const homes = new Map<Id, TableName | "laps">();
  const enter = (id: Id, home: TableName | "laps") => {
    if (!homes.has(id)) homes.set(id, home);
  };
  for (const table of tableNames) for (const id of known[table]) enter(id, table);
  for (const table of tableNames) for (const { id } of rows[table]) enter(id, table);
  for (const { laps } of rows.runs) for (const { id } of laps) enter(id, "laps");
  return homes;
}
