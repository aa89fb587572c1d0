import { tableNames } from "#domain";
import { pastBadRows } from "../edge/pastBadRows.ts";
import { faultOf, isLostConnection } from "../fault.ts";
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
  let native: IDBTransaction | undefined;
  try {
    // Where a table has been added that is in no list of rows yet, a merge reads it all the same.
    const tables = [...tableNames, "digests", "aside", ...Object.keys(book.unknownTables)];
    return await book.database.transaction("rw", tables, async (transaction) => {
      native = transaction.idbtrans;
      const writer = makeWriter(transaction, book.clock(), book.newId);
      const result = await work(writer);
      await markDigests(writer);
      return result;
    });
  } catch (error) {
    if (native === undefined && isLostConnection(error)) throw new NeverBegun(notDone, { cause: error });
    // A request that falls with its transaction only says "aborted"; the transaction knows the reason.
    throw faultOf(error, notDone, native?.error);
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
