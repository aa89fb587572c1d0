import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium } from "@playwright/test";
import { findBrowser } from "../support/browser.ts";
import { backupWithLaps } from "./manyLaps.ts";

/** A browser that keeps its data in a folder. */
export async function launch(folder: string): Promise<BrowserContext> {
  const { executablePath, env } = await findBrowser();
  return chromium.launchPersistentContext(folder, {
    executablePath,
    env,
    args: ["--no-sandbox", "--disable-gpu"],
    viewport: { width: 1280, height: 800 },
  });
}

/**
 * A folder whose browser holds a logbook of so many laps, restored from a backup by the app itself, with the figures of
 * all sessions worked out and kept.
 * @param isPlanned with targets, and a plan that the open session drives
 */
export async function filled(laps: number, address: string, isPlanned = false): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "lap-ledger-"));
  const file = join(folder, "backup.json");
  writeFileSync(file, await backupWithLaps(laps, isPlanned));
  const context = await launch(folder);
  const page = await context.newPage();
  await page.goto(`${address}/#/data`);
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Choose a backup file" }).click();
  await (await chooser).setFiles(file);
  await page.getByRole("radio", { name: "a new logbook" }).check({ timeout: 300_000 });
  await page.getByRole("button", { name: /^Restore as a new logbook/ }).click();
  await page.getByText(`${laps} laps” is open`).first().waitFor({ timeout: 300_000 });
  await page.goto(`${address}/#/review?period=all`);
  await page.getByRole("figure").first().waitFor({ timeout: 300_000 });
  await page.waitForFunction(areDigestsKept, undefined, { polling: 500, timeout: 300_000 });
  await context.close();
  return folder;
}

/** Whether the figures of every session are in the database: what was worked out is kept in a moment of rest. */
async function areDigestsKept(): Promise<boolean> {
  const counts = (name: string) =>
    new Promise<readonly number[]>((resolve, reject) => {
      const request = indexedDB.open(name);
      request.onerror = () => reject(request.error);
      request.onsuccess = () => {
        const read = request.result.transaction(["sessions", "digests"]);
        const [sessions, digests] = ["sessions", "digests"].map((table) => read.objectStore(table).count());
        read.oncomplete = () => {
          request.result.close();
          resolve([sessions?.result ?? 0, digests?.result ?? 0]);
        };
        read.onerror = () => reject(read.error);
      };
    });
  const names = (await indexedDB.databases()).flatMap(({ name = "" }) =>
    name.startsWith("lap-ledger-") ? [name] : [],
  );
  const all = await Promise.all(names.map(counts));
  return all.some(([sessions = 0, digests]) => sessions > 0 && sessions === digests);
}
