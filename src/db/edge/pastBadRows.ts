import type { Logbook } from "../logbook.ts";
import { BadRowMet } from "./checkReads.ts";
import { setAside } from "./setAside.ts";

/** Each try sets aside every bad row that one read has met, so this many are never needed. */
const mostTries = 100;

/** Does a piece of work that writes. Rows it meets that cannot be right are set aside first; it is then begun anew. */
export async function pastBadRows<R>(
  book: Logbook,
  work: () => PromiseLike<R>,
  triesLeft = mostTries,
): Promise<R> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof BadRowMet) || triesLeft <= 1) throw error;
    await setAside(book, error.rows);
    return pastBadRows(book, work, triesLeft - 1);
  }
}
