import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { UnreadableRow } from "../unreadable.ts";

/**
 * Sets aside the rows, and the laps inside runs, that were found not to be what they should: see `takeOut`, which is rare and
 * therefore fetched when it is needed. Throws LedgerFault.
 */
export async function setAside(book: Logbook, rows: readonly UnreadableRow[]): Promise<void> {
  const { takeOut } = await import("./takeOut.ts").catch((error: unknown) => {
    const why = "a part of the app could not be fetched. Reload when the connection is back.";
    throw new LedgerFault("failed", `Rows not set aside: ${why}`, error);
  });
  await takeOut(book, rows);
}
