import {
  type AllRows,
  everyTable,
  type Id,
  type Run,
  type Stamped,
  type TableName,
  tableNames,
} from "#domain";
import { linksOf } from "./checks/parentsOf.ts";

/** What is to be sent: one session, every row changed since a stamp, or these very rows. */
export type PartWanted =
  | { readonly kind: "session"; readonly sessionId: Id }
  | { readonly kind: "since"; readonly stamp: number }
  | { readonly kind: "rows"; readonly ids: ReadonlySet<Id> };

/**
 * The rows of one session, those changed since, or those named, with every row they hang on: combo, car, track, layout, pages, rig
 * settings. Deleted rows are rows. Merged into another copy, such a part does what a whole backup would do for these rows. Pure.
 */
export function partOf(rows: AllRows, wanted: PartWanted): AllRows {
  const ids = new Set<Id>();
  const want = (table: TableName, row: Stamped) => {
    ids.add(row.id);
    for (const id of linksOf(table, row)) ids.add(id);
  };
  for (const table of tableNames)
    for (const row of rows[table] as readonly Stamped[]) if (isWanted(table, row, wanted)) want(table, row);
  const combos = new Set<Id>(rows.sessions.filter(({ id }) => ids.has(id)).map(({ comboId }) => comboId));
  for (const page of rows.pages) if (combos.has(page.comboId)) want("pages", page);

  // A row wanted brings what it hangs on, which brings what that hangs on.
  for (let before = -1; before < ids.size; ) {
    before = ids.size;
    for (const table of tableNames)
      for (const row of rows[table] as readonly Stamped[]) if (ids.has(row.id)) want(table, row);
  }
  return everyTable((table) =>
    (rows[table] as readonly Stamped[]).filter(({ id }) => ids.has(id)),
  ) as unknown as AllRows;
}

function isWanted(table: TableName, row: Stamped, wanted: PartWanted): boolean {
  if (wanted.kind === "rows") return wanted.ids.has(row.id);
  if (wanted.kind === "since")
    return (
      row.updatedAt > wanted.stamp ||
      (table === "runs" && (row as Run).laps.some(({ updatedAt }) => updatedAt > wanted.stamp))
    );
  const { sessionId } = wanted;
  return row.id === sessionId || (row as { readonly sessionId?: Id }).sessionId === sessionId;
}
