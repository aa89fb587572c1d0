import type { IndexableType, Transaction } from "dexie";
import { type AsideRow, type Id, type TableName, tableNames } from "#domain";
import { inTransaction } from "../inTransaction.ts";
import type { Logbook } from "../logbook.ts";
import { markSessions } from "../putDifference.ts";
import type { UnreadableRow } from "../unreadable.ts";
import { refuseUnlessOpen } from "../writes/refuseUnlessOpen.ts";
import { makeWriter } from "../writes/writer.ts";
import { readUnchecked } from "./checkReads.ts";
import { sift } from "./sift.ts";

const notDone = "Rows not set aside";

/**
 * Takes rows that cannot be right out of their tables, and laps out of their runs, and keeps them as they are in `aside`.
 * Looks at each once more: one that is right by now stays. Figures of their sessions are made anew. Throws LedgerFault.
 * @param rows as `book.unreadable` or a write that met them names them
 */
export async function takeOut(book: Logbook, rows: readonly UnreadableRow[]): Promise<void> {
  refuseUnlessOpen(book, notDone);
  const stores = new Map<string, { readonly store: TableName | "digests"; readonly key: IndexableType }>();
  for (const { table, key, aside } of rows) {
    const store = (table === "laps" ? "runs" : table) as TableName | "digests";
    if (aside !== undefined) stores.set(`${store} ${key}`, { store, key: key as IndexableType });
  }
  await inTransaction(book.database, [...tableNames, "digests", "aside"], notDone, async (transaction) => {
    readUnchecked(transaction.idbtrans);
    const sessions = new Set<Id>();
    for (const { store, key } of stores.values())
      for (const id of await takeOutOne(transaction, store, key)) sessions.add(id);
    await markSessions(makeWriter(transaction, book.clock(), book.newId), sessions);
  });
  book.unreadable.forget(rows);
}

/** Gives the sessions whose figures it may have changed. */
async function takeOutOne(
  transaction: Transaction,
  store: TableName | "digests",
  key: IndexableType,
): Promise<Id[]> {
  const table = transaction.table<Readonly<Record<string, unknown>>, IndexableType>(store);
  const stored = await table.get(key);
  if (stored === undefined) return [];
  const { row, bad } = sift(store, stored);
  if (bad.length === 0) return [];
  // A digest can be made from its session; there is nothing in it to keep.
  if (store !== "digests")
    await transaction.table<AsideRow, Id>("aside").bulkPut(bad.map(({ aside }) => aside));
  if (row === undefined) await table.delete(key);
  else await table.put(row as Readonly<Record<string, unknown>>);
  const sessionId = store === "runs" ? stored["sessionId"] : key;
  const isOfSession = store === "runs" || store === "sessions" || store === "digests";
  return isOfSession && typeof sessionId === "string" ? [sessionId] : [];
}
