import type { Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { addRow, deleteRow, editRow, type NewRow, type RowEdit } from "./rowWrites.ts";

export function addCornerReview(
  book: Logbook,
  row: NewRow<"cornerReviews">,
): Promise<Change & { readonly id: Id }> {
  return addRow(book, "cornerReviews", "Corner review", row);
}

export function editCornerReview(book: Logbook, edit: RowEdit<"cornerReviews">): Promise<Change> {
  return editRow(book, "cornerReviews", "Corner review", edit);
}

export function deleteCornerReview(book: Logbook, id: Id): Promise<Change> {
  return deleteRow(book, "cornerReviews", "Corner review", id);
}
