import {
  type Around,
  type CheckedRows,
  checkBeside,
  checkRows,
  idsOf,
  LedgerFault,
  lowestSchema,
  migrateRows,
  newestSchema,
  withAside,
} from "#db";
import type { AllRows, Reading } from "#domain";
import { type Backup, browserSha256, isPasteText, readBackup, readPasteText, readText } from "#files";

/** A backup with its rows brought to the newest schema, and those of them that can be taken on their own. */
export interface SourceRead {
  readonly backup: Backup;
  readonly tables: ReturnType<typeof migrateRows>;
  readonly alone: CheckedRows;
  readonly around: Around;
}

export type ReadSource = (source: Blob) => Promise<Reading<SourceRead>>;

/**
 * Reads a backup from a file or from pasted text, packed or not, or says what is wrong with it.
 * @param now this device's clock, epoch ms; without it no row is asked whether it can have happened yet
 */
export async function readSource(source: Blob, now?: number): Promise<Reading<SourceRead>> {
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
  const around = now === undefined ? {} : { now };
  const tables = migrateRows(read.backup.tables, read.backup.schema);
  return {
    ok: true,
    backup: read.backup,
    tables,
    alone: withAside(tables, checkRows(tables, around)),
    around,
  };
}

/** The same, where it has been read before: what is wrong now is a fault. */
export async function readAgain(source: Blob, readFile: ReadSource): Promise<SourceRead> {
  const read = await readFile(source);
  if (read.ok) return read;
  throw new LedgerFault("invalid", `${read.problem.wrong} ${read.problem.right} Nothing was changed.`);
}

/** The rows that can be taken into a logbook: rows that miss another one alone may find it there. */
export function rowsBeside({ tables, alone, around }: SourceRead, here: AllRows): CheckedRows {
  const beside =
    alone.bad.length === 0
      ? checkBeside(alone.rows, here)
      : checkRows(tables, { known: idsOf(here), ...around });
  return withAside(tables, beside);
}
