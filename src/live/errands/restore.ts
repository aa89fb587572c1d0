import { restoreAsNew, rowsIn } from "#db";
import type { Errand } from "./errand.ts";
import { readAgain } from "./readSource.ts";

export interface Restore {
  readonly source: Blob;
  /** Name of a database that is not there yet. */
  readonly name: string;
}

export interface Restored {
  readonly rows: number;
  /** As the file has it. */
  readonly title: string;
}

/** Stores a file as a new database, whole or not at all; rows that are not as they should be are left out. */
export const restore: Errand<Restore, Restored> = async (
  { source, name },
  { book, readFile, tell, signal },
) => {
  tell({ step: "Reading the file" });
  const { alone, backup } = await readAgain(source, readFile);
  const { rows } = alone;
  const { clock, newId } = book;
  const made = await restoreAsNew(rows, {
    name,
    clock,
    newId,
    signal,
    onProgress: (done, all) =>
      tell({ step: `${done} of ${all} rows stored`, share: done / Math.max(1, all) }),
  });
  made.close();
  return { rows: rowsIn(rows), title: backup.title };
};
