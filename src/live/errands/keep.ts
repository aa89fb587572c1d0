import { dump, type KeptBecause, keepCopy } from "#db";
import type { Errand } from "./errand.ts";
import { liveCounts, packRows } from "./packRows.ts";

export interface Keep {
  readonly title: string;
  readonly why: KeptBecause;
}

/** Keeps the open logbook as it is on the shelf; gives the id of the kept state. */
export const keep: Errand<Keep, string> = async ({ title, why }, { book, shelf, tell }) => {
  tell({ step: "Keeping the logbook as it is" });
  const rows = await dump(book);
  const bytes = await packRows(rows, title);
  const kept = await keepCopy(shelf, { logbook: book.name, title, why, ...liveCounts(rows), packed: bytes });
  return kept.id;
};
