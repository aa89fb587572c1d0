import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { backupWithLaps } from "../bench/manyLaps.ts";
import { logbooksThere } from "../support/journeyDatabase.ts";
import { limitSpace } from "../support/journeyFaults.ts";
import { expect, goTo, lapTime, logLap, open, startSession, test } from "../support/journeys.ts";

let folder: string;
const fileOf = (laps: number) => join(folder, `${laps}.json`);
test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "lap-ledger-"));
  for (const laps of [30_000, 100_000]) writeFileSync(fileOf(laps), await backupWithLaps(laps));
});
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Begins a restore of so many laps as a logbook of its own. */
async function beginRestore(page: Page, laps: number): Promise<void> {
  await goTo(page, "Data");
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Choose a backup file" }).click();
  await (await chooser).setFiles(fileOf(laps));
  await page.getByRole("button", { name: "Restore as a new logbook" }).click();
}

test("the driver sees that a restore found no space left, and nothing was changed", async ({
  page,
  context,
  baseURL,
}) => {
  const cdp = await context.newCDPSession(page);
  await limitSpace(cdp, new URL(baseURL ?? "").origin, 4_000_000);
  await open(page);
  await startSession(page, "club hatch", "Marlow Fen");
  await logLap(page, "1:25.118");
  await beginRestore(page, 30_000);
  await expect(page.getByText("no space left").first()).toBeVisible({ timeout: 30_000 });
  await expect.poll(() => logbooksThere(page)).toHaveLength(1);
  await goTo(page, "Log");
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
});

test("the driver finds the old logbook and no half of a new one when the tab crashed in the middle of a restore", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Marlow Fen");
  await logLap(page, "1:25.118");
  await beginRestore(page, 100_000);
  await expect(page.getByText(/[1-9]\d* of \d+ rows stored/)).toBeVisible();
  const crashed = page.waitForEvent("crash");
  const cdp = await context.newCDPSession(page);
  cdp.send("Page.crash").catch(() => undefined);
  await crashed;
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
