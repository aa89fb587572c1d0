import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";

declare global {
  interface Window {
    /** A connection that stands in the way of every other tab until it is closed. */
    heldOpen?: IDBDatabase;
  }
}

/** Names and versions of the app's databases in this browser, the list of logbooks left out. */
export const logbooksThere = (page: Page) =>
  page.evaluate(async () =>
    (await indexedDB.databases()).flatMap(({ name = "", version = 0 }) =>
      name.startsWith("lap-ledger-") ? [{ name, version }] : [],
    ),
  );

/** Opens a connection to the only logbook that lets no upgrade and no erasing through. */
export async function holdOpen(page: Page): Promise<void> {
  const [logbook] = await logbooksThere(page);
  await page.evaluate(
    (name) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onsuccess = () => {
          window.heldOpen = request.result;
          resolve();
        };
        request.onerror = () => reject(request.error);
      }),
    logbook?.name ?? "",
  );
}

/** Closes that connection again. */
export const letGo = (page: Page) => page.evaluate(() => window.heldOpen?.close());

/** Every row of one table of the only logbook, as the browser holds it. */
export async function storedRows(page: Page, table: string): Promise<readonly Record<string, unknown>[]> {
  const [logbook] = await logbooksThere(page);
  return storedRowsOf(page, logbook?.name ?? "", table);
}

/** Every row of one table of a logbook, by the name of its database. */
export function storedRowsOf(
  page: Page,
  logbook: string,
  table: string,
): Promise<readonly Record<string, unknown>[]> {
  return page.evaluate(
    ([name = "", store = ""]) =>
      new Promise<Record<string, unknown>[]>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const database = request.result;
          const all = database.transaction(store).objectStore(store).getAll();
          all.onerror = () => reject(all.error);
          all.onsuccess = () => {
            database.close();
            resolve(all.result);
          };
        };
      }),
    [logbook, table],
  );
}

/** What a backup file holds, pressed for by a button of that name. */
export async function savedBackup(page: Page, button: string) {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button }).first().click(),
  ]);
  const path = await download.path();
  return { path, backup: JSON.parse(readFileSync(path, "utf8")) as SavedBackup };
}

interface SavedBackup {
  readonly schema: number;
  readonly counts: Readonly<Record<string, number>>;
  readonly tables: Readonly<Record<string, readonly Record<string, unknown>[]>>;
}
