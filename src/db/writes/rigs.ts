import type { Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { driveWith } from "./nextRun.ts";
import { addRow, deleteRow, editRow, type NewRow, type RowEdit } from "./rowWrites.ts";

/**
 * Begins a new record of rig settings; the old ones stay. Runs that were driven keep what they were driven with; where a
 * session is open, the next lap of a run that has none yet is driven with the new.
 */
export function addRig(book: Logbook, row: NewRow<"rigs">): Promise<Change & { readonly id: Id }> {
  return addRow(book, "rigs", "Rig settings", row, driveWith);
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
