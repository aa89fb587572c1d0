import { tableNames } from "#domain";
import { faultOf, isLostConnection, LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { LogbookStatus } from "../status.ts";
import { markDigests } from "./markDigests.ts";
import { makeWriter, type Writer } from "./writer.ts";

const closedBecause: Readonly<Record<Exclude<LogbookStatus["kind"], "ok">, string>> = {
  blocked: "another tab of Lap Ledger holds the logbook open in an older version. Close it to go on.",
  newerTab: "Lap Ledger was updated in another tab. Reload this page; typed text is kept.",
  newer: "this logbook was last used by a newer version of Lap Ledger. Reload to get it.",
  gone: "the stored logbook has disappeared from this browser. Restore a backup.",
  closed: "the browser lost its connection to the logbook. Reload the page; typed text is kept.",
};

/** Throws when nothing may be written to the logbook. */
export function refuseUnlessOpen(book: Logbook, notDone: string): void {
  const { kind } = book.status.get();
  if (kind !== "ok")
    throw new LedgerFault(kind === "blocked" ? "closed" : kind, `${notDone}: ${closedBecause[kind]}`);
}

/**
 * Runs one write in one transaction: all of it is stored, or nothing. Resolves when the transaction is complete. A
 * connection that turns out to be lost before the transaction began is had again, once.
 * @param notDone what the driver reads first when it fails: "Lap not stored"
 */
export async function write<R>(
  book: Logbook,
  notDone: string,
  work: (writer: Writer) => Promise<R>,
): Promise<R> {
  try {
    return await attempt(book, notDone, work);
  } catch (error) {
    if (!(error instanceof NeverBegun)) throw error;
    return await reopened(book, notDone, () => attempt(book, notDone, work));
  }
}

/** The connection was lost before the transaction began, so nothing of it can have been stored. */
class NeverBegun extends Error {}

async function attempt<R>(book: Logbook, notDone: string, work: (writer: Writer) => Promise<R>): Promise<R> {
  refuseUnlessOpen(book, notDone);
  let native: IDBTransaction | undefined;
  try {
    return await book.database.transaction("rw", [...tableNames, "digests"], async (transaction) => {
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
