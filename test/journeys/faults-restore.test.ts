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

test("the driver finds the old logbook and no half of a new one when the tab crashed in the middle of a restore", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Marlow Fen");
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
  const aDayLater = await context.newPage();
  await aDayLater.clock.install({ time: Date.now() + 25 * 3_600_000 });
  await open(aDayLater);
  await aDayLater.clock.runFor(61_000);
  await expect.poll(() => logbooksThere(aDayLater)).toHaveLength(1);
  await expect(lapTime(aDayLater, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
});
