import type { CDPSession, Page } from "@playwright/test";

declare global {
  interface Window {
    /** Set while every write to a logbook is to fail. */
    failWrites?: boolean;
  }
}

/**
 * Limits the space of the app's address; call it before the page first opens its database, later is too late.
 * @param bytes undefined lifts the limit
 */
export async function limitSpace(cdp: CDPSession, origin: string, bytes: number | undefined): Promise<void> {
  await cdp.send("Storage.overrideQuotaForOrigin", {
    origin,
    ...(bytes !== undefined && { quotaSize: bytes }),
  });
}

/** Makes writes fail on demand: while `window.failWrites` is set, each change of a row ends in an aborted transaction. */
export async function makeWritesFailable(page: Page): Promise<void> {
  await page.addInitScript(() => {
    for (const name of ["add", "put", "delete"] as const) {
      const real = IDBObjectStore.prototype[name] as (...given: unknown[]) => IDBRequest;
      Object.defineProperty(IDBObjectStore.prototype, name, {
        value(this: IDBObjectStore, ...given: unknown[]) {
          const request = real.apply(this, given);
          if (window.failWrites && this.name === "runs") this.transaction.abort();
          return request;
        },
      });
    }
  });
}

/** Turns the failing of writes on or off. */
export const failWrites = (page: Page, isOn: boolean) =>
  page.evaluate((on) => {
    window.failWrites = on;
  }, isOn);

/** Fills what is left of the app's space from a database of its own, ever smaller pieces until none fits. */
export const fillSpace = (page: Page) =>
  page.evaluate(async () => {
    const opening = indexedDB.open("filling", 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore("pieces", { autoIncrement: true });
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const put = (bytes: number) =>
      new Promise<boolean>((resolve) => {
        const transaction = database.transaction("pieces", "readwrite");
        transaction.oncomplete = () => resolve(true);
        transaction.onabort = () => resolve(false);
        transaction.objectStore("pieces").add(crypto.getRandomValues(new Uint8Array(bytes)));
      });
    for (let bytes = 65_536; bytes >= 64; bytes /= 2) while (await put(bytes));
    database.close();
  });

/** Kills the process that draws a tab, as a crash would. The tab is still to be closed. */
export async function crashTab(tab: Page): Promise<void> {
  const crash = await readyToCrash(tab);
  await crash();
}

/** The same, with all ready beforehand: also a page that is busy, and answers nothing, is killed at once. */
export async function readyToCrash(tab: Page): Promise<() => Promise<void>> {
  const cdp = await tab.context().newCDPSession(tab);
  return async () => {
    const crashed = tab.waitForEvent("crash");
    cdp.send("Page.crash").catch(() => undefined);
    await crashed;
  };
}
