import { dump, type PartWanted, partOf, rowsIn } from "#db";
import { newestStamp } from "#files";
import type { Errand } from "./errand.ts";
import { liveCounts, packRows } from "./packRows.ts";

export interface Part {
  readonly wanted: PartWanted;
  readonly title: string;
}

export interface PartMade {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly rows: number;
  readonly sessions: number;
  readonly laps: number;
  /** Newest stamp in the logbook: what is sent next begins behind it. */
  readonly upTo: number;
}

/** Makes the small backup that is sent to another device. */
export const part: Errand<Part, PartMade> = async ({ wanted, title }, { book, tell }) => {
  tell({ step: "Collecting the rows" });
  const all = await dump(book);
  const rows = partOf(all, wanted);
  return {
    bytes: await packRows(rows, title),
    rows: rowsIn(rows),
    ...liveCounts(rows),
    upTo: newestStamp(all),
  };
};
