import { dump, newestSchema } from "#db";
import { browserSha256, pack, writeBackup } from "#files";
import type { Errand } from "./errand.ts";

export interface Backup {
  readonly title: string;
  /** Packed as gzip. */
  readonly isSmall: boolean;
}

/** The logbook as the bytes of a backup file. */
export const backup: Errand<Backup, Uint8Array<ArrayBuffer>> = async ({ title, isSmall }, { book, tell }) => {
  tell({ step: "Reading the logbook" });
  const rows = await dump(book);
  tell({ step: "Writing the file" });
  const text = await writeBackup(rows, { title, schema: newestSchema, sha256: browserSha256() });
  return isSmall ? pack(text) : new TextEncoder().encode(text);
};
