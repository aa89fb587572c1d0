import { type CheckedRows, checkRows, lowestSchema, migrateRows, newestSchema } from "#db";
import type { Reading } from "#domain";
import { type Backup, browserSha256, readBackup, readText } from "#files";

/** A backup file that is whole, with its rows brought to the newest schema and checked one by one. */
export interface ReadFile {
  readonly backup: Backup;
  readonly checked: CheckedRows;
}

/** Reads a file the driver chose, or says what is wrong with it. Nothing is stored. */
export async function readBackupFile(file: Blob): Promise<Reading<ReadFile>> {
  const text = await readText(file);
  if (!text.ok) return text;
  const known = { lowest: lowestSchema, newest: newestSchema, sha256: browserSha256() };
  const read = await readBackup(text.text, known);
  if (!read.ok) return read;
  const { backup } = read;
  return { ok: true, backup, checked: checkRows(migrateRows(backup.tables, backup.schema)) };
}
