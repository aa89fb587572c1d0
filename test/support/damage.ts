import type { Dice } from "./mutateBackup.ts";

/** Values that no field of a row may hold, as a browser's store can hold them all the same. */
const wrongValues: readonly unknown[] = [
  42,
  -1,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  1e300,
  "",
  "x",
  "0000-00-00",
  "2026-02-30",
  true,
  null,
  [],
  [null],
  {},
  { toString: 1 },
  new Date(0),
  new Uint8Array(2),
];

/** What one damage did, in words for a failing test. */
export interface Damaged {
  readonly row: Record<string, unknown>;
  readonly what: string;
}

/** A copy of a row with one of its fields, or of those of one of its laps, taken out or holding something else. */
export function damaged(row: object, keyPath: string, dice: Dice): Damaged {
  const copy = structuredClone(row) as Record<string, unknown>;
  const laps = Array.isArray(copy["laps"]) ? (copy["laps"] as unknown[]) : [];
  const isOfLap = laps.length > 0 && dice(2) === 0;
  const at = dice(Math.max(1, laps.length));
  if (isOfLap && dice(12) === 0) {
    laps[at] = wrongValues[dice(wrongValues.length)];
    return { row: copy, what: `lap ${at} = ${String(laps[at])}` };
  }
  const target = isOfLap ? (laps[at] as Record<string, unknown>) : copy;
  const fields = Object.keys(target).filter((field) => isOfLap || field !== keyPath);
  const field = fields[dice(fields.length)] ?? "";
  if (dice(5) === 0) Reflect.deleteProperty(target, field);
  else target[field] = wrongValues[dice(wrongValues.length)];
  return { row: copy, what: `${isOfLap ? `lap ${at} ` : ""}${field} = ${JSON.stringify(target[field])}` };
}

/** Puts a row into a store by the browser's own database, past everything that would look at it. */
export async function putRaw(name: string, table: string, row: object): Promise<void> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open(name);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const transaction = database.transaction(table, "readwrite");
  transaction.objectStore(table).put(row);
  await new Promise((resolve, reject) => {
    transaction.oncomplete = resolve;
    transaction.onabort = () => reject(transaction.error);
  });
  database.close();
}
