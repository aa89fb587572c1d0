import type { Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { addRow, deleteRow, editRow, type NewRow, type RowEdit } from "./rowWrites.ts";

/** Begins a new record of rig settings; the old ones stay. */
export function addRig(book: Logbook, row: NewRow<"rigs">): Promise<Change & { readonly id: Id }> {
  return addRow(book, "rigs", "Rig settings", row);
}

/** Mends a record of rig settings; a change of the rig itself is a new record. */
export function editRig(book: Logbook, edit: RowEdit<"rigs">): Promise<Change> {
  return editRow(book, "rigs", "Rig settings", edit);
}

export function deleteRig(book: Logbook, id: Id): Promise<Change> {
  return deleteRow(book, "rigs", "Rig settings", id);
}

export function addRigTest(book: Logbook, row: NewRow<"rigTests">): Promise<Change & { readonly id: Id }> {
  return addRow(book, "rigTests", "Rig test", row);
}

export function editRigTest(book: Logbook, edit: RowEdit<"rigTests">): Promise<Change> {
  return editRow(book, "rigTests", "Rig test", edit);
}

export function deleteRigTest(book: Logbook, id: Id): Promise<Change> {
  return deleteRow(book, "rigTests", "Rig test", id);
}
