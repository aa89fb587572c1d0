import type { Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { addRow, deleteRow, editRow, type NewRow, type RowEdit } from "./rowWrites.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

/** Sets a target for a combo. Without `setAt`, now. */
export function setTarget(
  book: Logbook,
  target: Omit<NewRow<"targets">, "setAt"> & { readonly setAt?: number },
): Promise<Change & { readonly id: Id }> {
  return addRow(book, "targets", "Target", { setAt: book.clock(), ...target });
}

export function editTarget(book: Logbook, edit: RowEdit<"targets">): Promise<Change> {
  return editRow(book, "targets", "Target", edit);
}

/** Archives a target, or takes it out of the archive. */
export function archiveTarget(
  book: Logbook,
  { id, isArchived = true }: { readonly id: Id; readonly isArchived?: boolean },
): Promise<Change> {
  return write(book, "Target not archived", async (writer) => {
    await writer.patch("targets", id, { archivedAt: isArchived ? writer.now : undefined });
    return changeOf(writer, isArchived ? "Target archived" : "Target taken out of the archive");
  });
}

export function deleteTarget(book: Logbook, id: Id): Promise<Change> {
  return deleteRow(book, "targets", "Target", id);
}

/** Keeps what was said about a target's chance, to be scored later. */
export function addForecast(book: Logbook, row: NewRow<"forecasts">): Promise<Change & { readonly id: Id }> {
  return addRow(book, "forecasts", "Forecast", row);
}

/** Notes whether the target of a forecast was reached by its date. */
export function scoreForecast(
  book: Logbook,
  { id, reached }: { readonly id: Id; readonly reached: boolean },
): Promise<Change> {
  return editRow(book, "forecasts", "Forecast", { id, patch: { reached } });
}
