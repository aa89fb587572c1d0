import type { AsideRow } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";

/** Rows set aside that are neither mended nor deleted for good yet, those of a table together. */
export async function asideRows(book: ReadOnlyLogbook): Promise<AsideRow[]> {
  const rows = (await book.aside?.toArray()) ?? [];
  return rows
    .filter(({ row }) => row !== undefined)
    .sort((a, b) => (a.table === b.table ? (a.id < b.id ? -1 : 1) : a.table < b.table ? -1 : 1));
}
