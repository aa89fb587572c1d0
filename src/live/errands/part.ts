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
  /**
   * All up to this stamp is in it or has been sent before, so what is sent next begins behind it: the newest in the
   * logbook, but never later than this device's clock, because rows of a device whose clock is ahead would hide what is
   * written here next. Absent where one session is sent, which says nothing of the others.
   */
  readonly upTo?: number;
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
    ...(wanted.kind === "since" && { upTo: Math.min(newestStamp(all), book.clock()) }),
  };
};
