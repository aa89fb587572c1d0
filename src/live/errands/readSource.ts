import { LedgerFault, lowestSchema, migrateRows, newestSchema } from "#db";
import type { Reading } from "#domain";
import { type Backup, browserSha256, isPasteText, readBackup, readPasteText, readText } from "#files";

/** A backup with its rows brought to the newest schema; they are still to be checked one by one. */
export interface ReadSource {
  readonly backup: Backup;
  readonly tables: ReturnType<typeof migrateRows>;
}

/** Reads a backup from a file or from pasted text, packed or not, or says what is wrong with it. */
export async function readSource(source: Blob): Promise<Reading<ReadSource>> {
  let text = await readText(source);
  if (text.ok && isPasteText(text.text)) {
    const pasted = readPasteText(text.text);
    if (!pasted.ok) return pasted;
    text = await readText(new Blob([pasted.bytes]));
  }
  if (!text.ok) return text;
  const known = { lowest: lowestSchema, newest: newestSchema, sha256: browserSha256() };
  const read = await readBackup(text.text, known);
  if (!read.ok) return read;
  return { ok: true, backup: read.backup, tables: migrateRows(read.backup.tables, read.backup.schema) };
}

/** The same, where it has been read before: what is wrong now is a fault. */
export async function readAgain(source: Blob): Promise<ReadSource> {
  const read = await readSource(source);
  if (read.ok) return read;
  throw new LedgerFault("invalid", `${read.problem.wrong} ${read.problem.right} Nothing was changed.`);
}
