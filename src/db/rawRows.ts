import { type AllRows, everyTable, plainValue } from "#domain";
import { derivedTables } from "./derived.ts";
import { faultOf, LedgerFault } from "./fault.ts";
import { openAsItIs } from "./openAsItIs.ts";
import type { UnreadableRow } from "./unreadable.ts";

/** A logbook as the browser holds it: not migrated, not checked. */
export interface RawRows {
  readonly rows: AllRows;
  /** The schema the rows are in. */
  readonly schema: number;
  /** Rows the browser could not give. */
  readonly unreadable: readonly UnreadableRow[];
}

const notRead = "Logbook not read";

/**
 * Every row of a logbook, by the browser's own database and nothing else: it runs none of the code that opens, migrates or
 * checks a logbook, so that a backup can be made where that code fails. Makes and changes nothing. Throws LedgerFault.
 */
export async function rawRows(name: string): Promise<RawRows> {
  const database = await opened(name);
  try {
    const unreadable: UnreadableRow[] = [];
    const found: Record<string, readonly unknown[]> = {};
    for (const table of Array.from(database.objectStoreNames)) {
      // Figures are made from the rows again.
      if (derivedTables.includes(table)) continue;
      const rows = await rowsOf(database, table, unreadable);
      if (table !== "aside" || rows.length > 0) found[table] = rows.map(plainValue);
    }
    return {
      rows: { ...everyTable((table) => found[table] ?? []), ...found } as unknown as AllRows,
      schema: Math.floor(database.version / 10),
      unreadable,
    };
  } catch (error) {
    throw faultOf(error, notRead);
  } finally {
    database.close();
  }
}

async function opened(name: string): Promise<IDBDatabase> {
  const database = await openAsItIs(name).catch((error: unknown) => {
    throw faultOf(error, notRead);
  });
  if (database !== undefined) return database;
  const gone = "The stored logbook has disappeared from this browser: there is nothing to back up.";
  throw new LedgerFault("gone", gone);
}

async function rowsOf(
  database: IDBDatabase,
  table: string,
  unreadable: UnreadableRow[],
): Promise<readonly unknown[]> {
  const store = database.transaction(table).objectStore(table);
  try {
    return await answered(store.getAll());
  } catch {
    const keys = await answered(database.transaction(table).objectStore(table).getAllKeys());
    const rows: unknown[] = [];
    for (const key of keys)
      try {
        rows.push(await answered(database.transaction(table).objectStore(table).get(key)));
      } catch {
        // Named in the result, and said by whoever asked.
        unreadable.push({ table, id: String(key) });
      }
    return rows;
  }
}

function answered<R>(request: IDBRequest<R>): Promise<R> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = (event) => {
      event.preventDefault();
      reject(request.error);
    };
  });
}
