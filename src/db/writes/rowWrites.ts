import type { Id, TableName, Tables } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields, type Patch } from "../patch.ts";
import type { Change } from "./change.ts";
import type { Fields } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/** A new row; the id, where given, was made when the driver asked, so that trying again makes no second one. */
export type NewRow<T extends TableName> = Fields<Tables[T]> & { readonly id?: Id };

/** A change of one row: named fields, and the row as the driver saw it. */
export interface RowEdit<T extends TableName> {
  readonly id: Id;
  readonly patch: Patch<Fields<Tables[T]>>;
  readonly expected?: Tables[T];
}

/**
 * Adds one row of a table without children.
 * @param word how the driver calls it: "Target"
 * @param alsoDo what else goes with it in the same transaction
 */
export function addRow<T extends TableName>(
  book: Logbook,
  table: T,
  word: string,
  row: NewRow<T>,
  alsoDo: (writer: Writer, added: Tables[T]) => Promise<void> = async () => {},
): Promise<Change & { readonly id: Id }> {
  return write(book, `${word} not stored`, async (writer) => {
    const { id, ...fields } = row;
    const known = id === undefined ? undefined : await writer.find(table, id);
    if (known) return { what: `${word} already stored`, edits: [], id: known.id };
    const added = await writer.add(table, fields as unknown as Fields<Tables[T]>, id);
    await alsoDo(writer, added);
    return { ...changeOf(writer, `${word} added`), id: added.id };
  });
}

/** Changes named fields of one row. */
export function editRow<T extends TableName>(
  book: Logbook,
  table: T,
  word: string,
  edit: RowEdit<T>,
): Promise<Change> {
  return write(book, `${word} not changed`, async (writer) => {
    const before = await writer.get(table, edit.id);
    await writer.patch(table, edit.id, edit.patch as unknown as Patch<Tables[T]>);
    return changeOf(writer, `${word} changed`, overwrittenFields(before, edit.patch, edit.expected));
  });
}

/** Marks one row as deleted. */
export function deleteRow(book: Logbook, table: TableName, word: string, id: Id): Promise<Change> {
  return write(book, `${word} not deleted`, async (writer) => {
    await writer.remove(table, id);
    return changeOf(writer, `${word} deleted`);
  });
}
