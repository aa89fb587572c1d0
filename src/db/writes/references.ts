import type { Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { addRow, deleteRow, editRow, type NewRow, type RowEdit } from "./rowWrites.ts";

export function addReference(
  book: Logbook,
  row: NewRow<"references">,
): Promise<Change & { readonly id: Id }> {
  return addRow(book, "references", "Reference lap", row);
}

export function editReference(book: Logbook, edit: RowEdit<"references">): Promise<Change> {
  return editRow(book, "references", "Reference lap", edit);
}

export function deleteReference(book: Logbook, id: Id): Promise<Change> {
  return deleteRow(book, "references", "Reference lap", id);
}
