import { dump, marksOf, partOf, rowsIn } from "#db";
import type { Id } from "#domain";
import type { Errand } from "./errand.ts";
import { liveCounts, packRows } from "./packRows.ts";

export interface Part {
  /** One session, or every row that has not been sent from here as it is now. */
  readonly wanted: { readonly kind: "session"; readonly sessionId: Id } | { readonly kind: "unsent" };
  readonly title: string;
}

export interface PartMade {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly rows: number;
  readonly sessions: number;
  readonly laps: number;
  /**
   * The marks of all rows of the logbook: each is in the part or was sent before as it is. To be noted once the part has
   * gone. Absent where one session is sent, which says nothing of the others.
   */
  readonly marks?: ReadonlyMap<Id, number>;
}

/**
 * Makes the small backup that is sent to another device. What has been sent is told by the rows themselves, not by
 * stamps: rows of a clock that stood behind or ahead go as well, and so do those that came in from elsewhere.
 */
export const part: Errand<Part, PartMade> = async ({ wanted, title }, { book, shelf, tell }) => {
  tell({ step: "Collecting the rows" });
  const all = await dump(book);
  const sent = wanted.kind === "unsent" ? ((await shelf.sent.get(book.name))?.marks ?? new Map()) : undefined;
  const rows = partOf(all, wanted.kind === "session" ? wanted : { kind: "unsent", sent: sent ?? new Map() });
  return {
    bytes: await packRows(rows, title),
    rows: rowsIn(rows),
    ...liveCounts(rows),
    ...(wanted.kind === "unsent" && { marks: marksOf(all) }),
  };
};
