import {
  type AllRows,
  canonicalText,
  everyTable,
  type Id,
  type Stamped,
  type TableName,
  tableNames,
  textMark,
} from "#domain";
import { linksOf } from "./checks/rowsNamed.ts";

/** What is to be sent: one session, every row that is not as it was when these marks were taken, or these very rows. */
export type PartWanted =
  | { readonly kind: "session"; readonly sessionId: Id }
  | { readonly kind: "unsent"; readonly sent: ReadonlyMap<Id, number> }
  | { readonly kind: "rows"; readonly ids: ReadonlySet<Id> };

/** A number that is another one when anything in the row is, its laps and stamps included. */
export function markOfRow(row: Stamped): number {
  return textMark(canonicalText(row));
}

/** The mark of every row. */
export function marksOf(rows: AllRows): ReadonlyMap<Id, number> {
  return new Map(tableNames.flatMap((table) => rows[table].map((row) => [row.id, markOfRow(row)] as const)));
}

/**
 * The rows of one session, those not sent yet as they are, or those named, with every row they hang on: combo, car, track, layout, pages, rig
 * settings. Deleted rows are rows. Merged into another copy, such a part does what a whole backup would do for these rows. Pure.
 */
export function partOf(rows: AllRows, wanted: PartWanted): AllRows {
  const ids = new Set<Id>();
  const want = (table: TableName, row: Stamped) => {
    ids.add(row.id);
    for (const id of linksOf(table, row)) ids.add(id);
  };
  for (const table of tableNames)
    for (const row of rows[table] as readonly Stamped[]) if (isWanted(row, wanted)) want(table, row);

  // A row wanted brings what it hangs on, which brings what that hangs on; a session also the pages it may stand on.
  for (let before = -1; before < ids.size; ) {
    before = ids.size;
    for (const table of tableNames)
      for (const row of rows[table] as readonly Stamped[]) if (ids.has(row.id)) want(table, row);
    const combos = new Set(rows.sessions.filter(({ id }) => ids.has(id)).map(({ comboId }) => comboId));
    for (const page of rows.pages) if (combos.has(page.comboId)) want("pages", page);
  }
  return everyTable((table) =>
    (rows[table] as readonly Stamped[]).filter(({ id }) => ids.has(id)),
  ) as unknown as AllRows;
}

function isWanted(row: Stamped, wanted: PartWanted): boolean {
  if (wanted.kind === "rows") return wanted.ids.has(row.id);
  if (wanted.kind === "unsent") return wanted.sent.get(row.id) !== markOfRow(row);
  const { sessionId } = wanted;
  return row.id === sessionId || (row as { readonly sessionId?: Id }).sessionId === sessionId;
}
