import type { AllRows, Stamped, TableName } from "#domain";
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
  preferences: "preferences",
};

/** What a backup holds, one line a table, in the order a driver thinks of it; empty tables are left out. */
export function backupRows(rows: AllRows): Row[] {
  return (Object.keys(words) as (TableName | "laps")[]).flatMap((table) => {
    const all: readonly Stamped[] = table === "laps" ? rows.runs.flatMap(({ laps }) => laps) : rows[table];
    if (all.length === 0) return [];
    const deleted = all.filter(({ deletedAt }) => deletedAt !== undefined).length;
    const cells = { what: words[table], rows: all.length - deleted, deleted: deleted === 0 ? "" : deleted };
    return [{ id: table, cells }];
  });
}

/** A table of a backup as the driver calls it; an unknown one by its own name. */
export function tableWord(table: string): string {
  return Object.hasOwn(words, table) ? words[table as TableName] : table;
}
