import { tableNames } from "#domain";
import { pastBadRows } from "../edge/pastBadRows.ts";
import { faultOf, isLostConnection } from "../fault.ts";
import { inTransaction } from "../inTransaction.ts";
import type { Logbook } from "../logbook.ts";
import { markDigests } from "./markDigests.ts";
import { refuseUnlessOpen } from "./refuseUnlessOpen.ts";
import { makeWriter, type Writer } from "./writer.ts";

/**
 * Runs one write in one transaction: all of it is stored, or nothing. Resolves when the transaction is complete. A
 * connection that turns out to be lost before the transaction began is had again, once. Rows that cannot be right go aside
 * before it is begun anew.
 * @param notDone what the driver reads first when it fails: "Lap not stored"
 */
export async function write<R>(
  book: Logbook,
  notDone: string,
  work: (writer: Writer) => Promise<R>,
): Promise<R> {
  return pastBadRows(book, async () => {
    try {
      return await attempt(book, notDone, work);
    } catch (error) {
      if (!(error instanceof NeverBegun)) throw error;
      return await reopened(book, notDone, () => attempt(book, notDone, work));
    }
  });
}

/** The connection was lost before the transaction began, so nothing of it can have been stored. */
class NeverBegun extends Error {}

async function attempt<R>(book: Logbook, notDone: string, work: (writer: Writer) => Promise<R>): Promise<R> {
  refuseUnlessOpen(book, notDone);
  // Where a table has been added that is in no list of rows yet, a merge reads it all the same.
  const tables = [...tableNames, "digests", "aside", ...Object.keys(book.unknownTables)];
  let hasBegun = false;
  try {
    return await inTransaction(book.database, tables, notDone, async (transaction) => {
      hasBegun = true;
      const writer = makeWriter(transaction, book.clock(), book.newId);
      const result = await work(writer);
      await markDigests(writer);
      return result;
    });
  } catch (error) {
    if (!hasBegun && isLostConnection(error)) throw new NeverBegun(notDone, { cause: error });
    throw error;
  }
}

async function reopened<R>(book: Logbook, notDone: string, again: () => Promise<R>): Promise<R> {
  try {
    book.database.close({ disableAutoOpen: false });
    await book.database.open();
    return await again();
  } catch (error) {
    throw faultOf(error instanceof NeverBegun ? error.cause : error, notDone);
  }
}
