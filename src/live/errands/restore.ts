import { restoreAsNew, rowsIn } from "#db";
import type { Errand } from "./errand.ts";
import { readAgain } from "./readSource.ts";

export interface Restore {
  readonly source: Blob;
  /** Name of a database that is not there yet. */
  readonly name: string;
}

/** Stores a file as a new database, whole or not at all; rows that are not as they should be are left out. */
export const restore: Errand<Restore, number> = async (
  { source, name },
  { book, readFile, tell, signal },
) => {
  tell({ step: "Reading the file" });
  const { rows } = (await readAgain(source, readFile)).alone;
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
  return rowsIn(rows);
};
