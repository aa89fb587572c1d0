import type { Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { addRow, deleteRow, editRow, type NewRow, type RowEdit } from "./rowWrites.ts";

const word = (name: string | undefined) => (name === undefined ? "Plan" : "Template");

/** Keeps the plan of the next session with a combo, or, with a name and no combo, a template. */
export function addPlan(book: Logbook, row: NewRow<"plans">): Promise<Change & { readonly id: Id }> {
  return addRow(book, "plans", word(row.name), row);
}

export function editPlan(book: Logbook, edit: RowEdit<"plans">): Promise<Change> {
  return editRow(book, "plans", word(edit.expected?.name), edit);
}

export function deletePlan(
  book: Logbook,
  plan: { readonly id: Id; readonly name?: string },
): Promise<Change> {
  return deleteRow(book, "plans", word(plan.name), plan.id);
}
