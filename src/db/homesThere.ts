import { type Id, type Run, type Stamped, type TableName, tableNames } from "#domain";
import { rowsNamed } from "./checks/rowsNamed.ts";
import type { ReadOnlyLogbook } from "./logbook.ts";

/** A well-formed row and its table. */
export interface Placed {
  readonly table: TableName;
  readonly row: Stamped;
}

/**
 * Where the ids of some well-formed rows, and of all they name, are at home in a logbook; one that stands nowhere is left out.
 * The laps of all runs are read only where something a row could be without is in no table.
 */
export async function homesThere(
  tables: ReadOnlyLogbook["tables"],
  placed: readonly Placed[],
): Promise<Map<Id, TableName | "laps">> {
  const named = placed.flatMap(({ table, row }) => rowsNamed(table, row));
  const laps = placed.flatMap(({ table, row }) => (table === "runs" ? (row as Run).laps : []));
  const ids = [
    ...new Set([
      ...placed.map(({ row }) => row.id),
      ...laps.map(({ id }) => id),
      ...named.map(({ id }) => id),
    ]),
  ];
  const homes = new Map<Id, TableName | "laps">();
  for (const table of tableNames)
    for (const row of await tables[table].bulkGet(ids))
      if (row !== undefined && !homes.has(row.id)) homes.set(row.id, table);
  const sought = new Set(named.filter(({ id, isLoose }) => isLoose && !homes.has(id)).map(({ id }) => id));
  if (sought.size > 0)
    await tables.runs.toCollection().each((run) => {
      for (const { id } of run.laps) if (sought.has(id)) homes.set(id, "laps");
    });
  return homes;
}

/** Notes a row, with its laps, as one that stands in its table; what is at home already stays there. */
export function enterHome(homes: Map<Id, TableName | "laps">, { table, row }: Placed): void {
  if (!homes.has(row.id)) homes.set(row.id, table);
  if (table === "runs") for (const { id } of (row as Run).laps) if (!homes.has(id)) homes.set(id, "laps");
}
