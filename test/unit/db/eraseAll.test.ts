import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { databasesThere, eraseDatabases } from "#db";

/** An open connection to a database that is made. */
async function made(name: string): Promise<IDBDatabase> {
  const request = indexedDB.open(name);
  return new Promise((resolve) => {
    request.onsuccess = () => resolve(request.result);
  });
}
const all = async () => (await indexedDB.databases()).map(({ name }) => name).sort();

test("everything of the app is erased, and nothing of others on the same address", async () => {
  for (const name of ["lap-ledger-b", "lap-ledger", "lap-ledger-a", "lap-ledgers", "other"])
    (await made(name)).close();
  expect(await databasesThere()).toEqual(["lap-ledger", "lap-ledger-a", "lap-ledger-b"]);
  const told: boolean[] = [];
  await eraseDatabases((isBlocked) => told.push(isBlocked));
  expect(await databasesThere()).toEqual([]);
  expect(await all()).toEqual(expect.arrayContaining(["lap-ledgers", "other"]));
  expect(told).toEqual([false, false, false]);
});

test("a tab that holds a logbook open is told of and waited for, and the list of logbooks goes last", async () => {
  const [logbook, shelf] = [await made("lap-ledger-a"), await made("lap-ledger")];
  const told: string[] = [];
  shelf.onversionchange = () => {
    told.push("the list");
    shelf.close();
  };
  await eraseDatabases((isBlocked) => {
    told.push(isBlocked ? "blocked" : "on");
    if (isBlocked) logbook.close();
  });
  expect(told).toEqual(["blocked", "on", "the list", "on"]);
  expect(await databasesThere()).toEqual([]);
});
