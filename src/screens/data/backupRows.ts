import type { TableName } from "#domain";
import type { Preview } from "#live";
import type { Row } from "#ui/RuledTable.tsx";

const words: Readonly<Record<TableName | "laps", string>> = {
  sessions: "sessions",
  runs: "runs",
  laps: "laps",
  combos: "combos",
  cars: "cars",
  tracks: "tracks",
  layouts: "layouts",
  pages: "pages turned",
  references: "reference laps",
  targets: "targets",
  forecasts: "forecasts",
  rigs: "records of the rig",
  rigTests: "rig tests",
  cornerReviews: "corner reviews",
  plans: "plans",
  preferences: "preferences",
};

/** The tables of a logbook, and laps, in the order a driver thinks of them. */
export const heldTables = Object.keys(words) as (TableName | "laps")[];

/** What a backup holds, one line a table; empty tables are left out. */
export function backupRows(holds: Preview["holds"]): Row[] {
  return heldTables.flatMap((table) => {
    const { live, deleted } = holds[table];
    if (live + deleted === 0) return [];
    return [{ id: table, cells: { what: words[table], rows: live, deleted: deleted === 0 ? "" : deleted } }];
  });
}

/** A table of a backup as the driver calls it; an unknown one by its own name. */
export function tableWord(table: string): string {
  return Object.hasOwn(words, table) ? words[table as TableName] : table;
}
