import { LedgerFault, noteBackup, rawRows, type Shelf, type ShelvedLogbook, type UnreadableRow } from "#db";
import { type AllRows, practiceDay } from "#domain";
import { browserSha256, fileName, pack, saveFile, writeBackup } from "#files";
import type { SendOut } from "./errands/sending.ts";
import type { Surroundings } from "./openAtStart.ts";

/** What a backup is saved with. */
export interface Around {
  readonly shelf: Shelf;
  readonly surroundings: Surroundings;
  /** Absent where no logbook could be opened; the file is then written here. */
  readonly sendOut?: SendOut;
}

/** A backup that has been handed to the browser's downloads. */
export interface HandedOver {
  readonly file: string;
  /** Rows the browser could not read; they are not in the file. */
  readonly unreadable: readonly UnreadableRow[];
}

/**
 * Hands a logbook to the browser's downloads as one file, written off the page. Where that fails it is written here, of the
 * rows as the browser holds them, row by row: so it works for one that has lost its connection, one with rows that cannot be
 * read, one that cannot be brought to this version, and one a newer version wrote. Throws LedgerFault.
 * @param isSmall packed as gzip
 */
export async function handOverBackup(
  around: Around,
  logbook: Pick<ShelvedLogbook, "name" | "title">,
  isSmall = false,
): Promise<HandedOver> {
  const { shelf, surroundings } = around;
  const bytes = await writtenOffThePage(around, logbook, isSmall);
  if (bytes === undefined) return handOverHere(around, logbook, isSmall);
  const file = nameOf(surroundings, logbook.title, isSmall);
  saveFile(file, new Blob([bytes]));
  await noteBackup(shelf, logbook.name);
  return { file, unreadable: [] };
}

/** Undefined where it failed: the way on this page then finds out why, and says so. */
async function writtenOffThePage(
  { sendOut }: Around,
  { name, title }: Pick<ShelvedLogbook, "name" | "title">,
  isSmall: boolean,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  try {
    return await sendOut?.(name, "backup", { title, isSmall });
  } catch (error) {
    if (error instanceof LedgerFault) return undefined;
    throw error;
  }
}

async function handOverHere(
  { shelf, surroundings }: Around,
  { name, title }: Pick<ShelvedLogbook, "name" | "title">,
  isSmall: boolean,
): Promise<HandedOver> {
  const { rows, schema, unreadable } = await rawRows(name);
  const file = await handOverRows(surroundings, rows, { title, schema }, isSmall);
  if (unreadable.length === 0) await noteBackup(shelf, name);
  return { file, unreadable };
}

/** Hands rows to the browser's downloads as one backup file; gives its name. */
export async function handOverRows(
  surroundings: Pick<Surroundings, "clock" | "zone">,
  rows: AllRows,
  { title, schema }: { readonly title: string; readonly schema: number },
  isSmall = false,
): Promise<string> {
  const text = await writeBackup(rows, { title, schema, sha256: browserSha256() });
  const file = nameOf(surroundings, title, isSmall);
  saveFile(file, isSmall ? new Blob([await pack(text)]) : text);
  return file;
}

function nameOf(
  { clock, zone }: Pick<Surroundings, "clock" | "zone">,
  title: string,
  isSmall: boolean,
): string {
  const day = practiceDay(clock(), zone(), 0);
  return fileName(`Lap Ledger ${title}`, day, isSmall ? "json.gz" : "json");
}
