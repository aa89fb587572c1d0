import type { Dexie, Transaction } from "dexie";
import { faultOf } from "./fault.ts";

/**
 * Does a piece of work in one transaction that reads and writes: all of it is stored, or nothing. Resolves when the
 * transaction is complete.
 * @param notDone what the driver reads first when it fails: "Rows not set aside"
 * @throws LedgerFault with the true reason: a request that falls with its transaction only says "aborted", the transaction knows
 */
export async function inTransaction<R>(
  database: Dexie,
  tables: readonly string[],
  notDone: string,
  work: (transaction: Transaction) => Promise<R>,
): Promise<R> {
  let native: IDBTransaction | undefined;
  try {
    return await database.transaction("rw", tables, (transaction) => {
      native = transaction.idbtrans;
      return work(transaction);
    });
  } catch (error) {
    throw faultOf(error, notDone, native?.error);
  }
}
