import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BrowserContext, Page } from "@playwright/test";
import { backupWithLaps } from "../bench/manyLaps.ts";
import { logbooksThere, storedRowsOf } from "../support/journeyDatabase.ts";
import { chooseFile } from "../support/journeyDevices.ts";
import { limitSpace } from "../support/journeyFaults.ts";
import { expect, goTo, lapTime, logLap, open, startSession, test } from "../support/journeys.ts";

// The worker that keeps the app for later would take up some of the space, sooner or later.
test.use({ serviceWorkers: "block" });

let folder: string;
let file: string;
test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "lap-ledger-"));
  file = join(folder, "backup.json");
  writeFileSync(file, await backupWithLaps(30_000));
});
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Looks at the file of 30,000 laps. */
async function lookAtFile(page: Page): Promise<void> {
  await goTo(page, "Data");
  await chooseFile(page, "Choose a backup file", file);
}

/** A logbook of one lap, in a browser that allows the app's address 1.5 MB. */
async function withLittleSpace(page: Page, context: BrowserContext, baseURL: string): Promise<void> {
  await limitSpace(await context.newCDPSession(page), new URL(baseURL).origin, 1_500_000);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
}

/** The driver reads why, that nothing was changed, and how much is needed; and finds everything as it was. */
async function findsNothingChanged(page: Page, what: string, needs: RegExp): Promise<void> {
  const notice = page.getByText(`${what}: this browser has no space left`).last();
  await expect(notice).toBeVisible({ timeout: 60_000 });
  await expect(notice).toContainText("Nothing was changed.");
  await expect(notice).toContainText(needs);
  await expect.poll(() => logbooksThere(page)).toHaveLength(1);
  const [logbook] = await logbooksThere(page);
  for (const table of ["sessions", "runs", "combos"])
    expect(await storedRowsOf(page, logbook?.name ?? "", table)).toHaveLength(1);
  await goTo(page, "Log");
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
}

const needsTheFile = () => new RegExp(`It needs about ${(statSync(file).size / 1_000_000).toFixed(1)} MB\\.`);

test("the driver sees that a restore found no space left, how much it needs, and nothing was changed", async ({
  page,
  context,
  baseURL,
}) => {
  await withLittleSpace(page, context, baseURL ?? "");
  await lookAtFile(page);
  await page.getByRole("button", { name: "Restore as a new logbook" }).click();
  await findsNothingChanged(page, "Backup not restored", needsTheFile());
});

test("the driver sees that a merge found no space left, how much it needs, and nothing was changed", async ({
  page,
  context,
  baseURL,
}) => {
  await withLittleSpace(page, context, baseURL ?? "");
  await lookAtFile(page);
  await page.getByRole("radio", { name: "merge" }).check();
  await page.getByRole("button", { name: /^Merge/ }).click();
  await findsNothingChanged(page, "Not merged", needsTheFile());
});

test("the driver sees that an import found no space left, how much it needs, and nothing was changed", async ({
  page,
  context,
  baseURL,
}) => {
  // Chromium answers every page as if there were room for gigabytes; other browsers say what they allow.
  await page.addInitScript(() => {
    navigator.storage.estimate = async () => ({ quota: 1_500_000, usage: 600_000 });
  });
  await withLittleSpace(page, context, baseURL ?? "");
  await goTo(page, "Data");
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Choose a table of laps" }).click();
  const laps = Array.from({ length: 20_000 }, (_, n) => {
    const day = `2026-${String(1 + (n % 9)).padStart(2, "0")}-${String(1 + (n % 28)).padStart(2, "0")}`;
    return `${day},formula trainer,Sand Hollow,1:2${n % 10}.${String(n % 1000).padStart(3, "0")}`;
  });
  await (await chooser).setFiles({
    name: "laps.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(["date,car,track,time", ...laps].join("\n")),
  });
  await page.getByRole("button", { name: /^Import [\d,]+ laps/ }).click({ timeout: 60_000 });
  // 20,000 laps of 150 to 250 bytes each.
  const needs = /It needs about [345]\.\d MB; this browser says it allows this address about 0\.9 MB more\./;
  await findsNothingChanged(page, "Nothing imported", needs);
});
