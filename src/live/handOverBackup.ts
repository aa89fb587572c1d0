import { noteBackup, openLogbook, type Shelf, type ShelvedLogbook, salvage, type UnreadableRow } from "#db";
import { type AllRows, practiceDay } from "#domain";
import { browserSha256, fileName, saveFile, writeBackup } from "#files";
import type { Surroundings } from "./openAtStart.ts";

/** A backup that has been handed to the browser's downloads. */
export interface HandedOver {
  readonly file: string;
  /** Rows the browser could not read; they are not in the file. */
  readonly unreadable: readonly UnreadableRow[];
}

/**
 * Hands a logbook to the browser's downloads as one file. Reads by a connection of its own, so that it works for one
 * that is not open, for one that has lost its connection, and for one a newer version wrote. Throws LedgerFault.
 */
export async function handOverBackup(
  { shelf, surroundings }: { readonly shelf: Shelf; readonly surroundings: Surroundings },
  { name, title }: Pick<ShelvedLogbook, "name" | "title">,
): Promise<HandedOver> {
  const { clock, newId } = surroundings;
  const book = await openLogbook({ name, mode: "read", clock, newId });
  try {
    const { rows, unreadable } = await salvage(book);
    const file = await handOverRows(surroundings, rows, { title, schema: book.schema });
    if (unreadable.length === 0) await noteBackup(shelf, name);
    return { file, unreadable };
  } finally {
    book.close();
  }
}

/** Hands rows to the browser's downloads as one backup file; gives its name. */
export async function handOverRows(
  { clock, zone }: Pick<Surroundings, "clock" | "zone">,
  rows: AllRows,
  { title, schema }: { readonly title: string; readonly schema: number },
): Promise<string> {
  const text = await writeBackup(rows, { title, schema, sha256: browserSha256() });
  const file = fileName(`Lap Ledger ${title}`, practiceDay(clock(), zone(), 0), "json");
  saveFile(file, text);
  return file;
}
