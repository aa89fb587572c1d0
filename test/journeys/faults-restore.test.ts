import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { backupWithLaps } from "../bench/manyLaps.ts";
import { logbooksThere } from "../support/journeyDatabase.ts";
import { chooseFile } from "../support/journeyDevices.ts";
import { crashTab } from "../support/journeyFaults.ts";
import { expect, goTo, lapTime, logLap, open, startSession, test } from "../support/journeys.ts";

let folder: string;
let file: string;
test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "lap-ledger-"));
  file = join(folder, "backup.json");
  writeFileSync(file, await backupWithLaps(100_000));
});
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Begins a restore of 100,000 laps as a logbook of its own. */
async function beginRestore(page: Page): Promise<void> {
  await goTo(page, "Data");
  await chooseFile(page, "Choose a backup file", file);
  await page.getByRole("button", { name: "Restore as a new logbook" }).click();
}

/** How many databases have been found that are in no list. */
const foundUnlisted = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open("lap-ledger");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction("unlisted").objectStore("unlisted").getAll();
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            opening.result.close();
            resolve(reading.result.filter(({ seenOn }) => seenOn !== undefined).length);
          };
        };
      }),
  );

test("the driver finds the old logbook and no half of a new one when the tab crashed in the middle of a restore", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  await beginRestore(page);
  await expect(page.getByText(/[1-9]\d* of \d+ rows stored/)).toBeVisible();
  await crashTab(page);
  const again = await context.newPage();
  await open(again);
  await expect(lapTime(again, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
  await goTo(again, "Data");
  await expect(again.getByText("1 in this browser")).toBeVisible();
  expect(await logbooksThere(again)).toHaveLength(2);

  for (const tab of [page, again]) await tab.close();
  // On the first day it is found, on another it goes.
  for (const [day, left] of [
    [1, 2],
    [2, 1],
  ] as const) {
    const later = await context.newPage();
    await later.clock.install({ time: Date.now() + (24 * day + 1) * 3_600_000 });
    // A place that asks for no figures: a minute that passes at once is longer than any may take.
    await later.goto("/#/data");
    await later.getByRole("heading", { level: 1, name: "Data" }).waitFor();
    await later.clock.runFor(61_000);
    await goTo(later, "Log");
    await expect(lapTime(later, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
    await expect.poll(() => foundUnlisted(later)).toBe(left - 1);
    expect(await logbooksThere(later)).toHaveLength(left);
    await later.close();
  }
});
