import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import { savedBackup } from "../support/journeyDatabase.ts";
import { chooseFile } from "../support/journeyDevices.ts";
import { entryField, expect, goTo, lapTime, logLaps, open, startSession, test } from "../support/journeys.ts";
import { restMs, toBrowserMs } from "../support/waits.ts";

const gonePage = "Lap Ledger cannot open your logbook";

test("the driver sees that the logbook has disappeared under the open page, and saves what the tab still holds", async ({
  page,
  context,
  baseURL,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  await goTo(page, "Data");
  await goTo(page, "Log");
  await page.waitForTimeout(restMs);
  const cdp = await context.newCDPSession(page);
  const origin = new URL(baseURL ?? "").origin;
  await cdp.send("Storage.clearDataForOrigin", { origin, storageTypes: "indexeddb" });
  await expect(
    page.getByRole("alert").filter({ hasText: "has disappeared from this browser" }),
  ).toBeVisible();
  await entryField(page).fill("1:25.300");
  await entryField(page).press("Enter");
  await expect(page.getByRole("alert").filter({ hasText: "Not stored: 1:25.300" })).toBeVisible();
  const { path, backup } = await savedBackup(page, "Save what this tab still holds");
  expect(backup.tables["runs"]).toMatchObject([{ laps: [{ ms: 85_118 }, { ms: 85_902 }] }]);

  await page.reload();
  await expect(page.getByRole("heading", { name: gonePage })).toBeVisible();
  await expect(page.getByText("No backup of it was ever saved from here")).toBeVisible();
  await page.getByRole("button", { name: "Begin a new logbook and restore a backup" }).click();
  await chooseFile(page, "Choose a backup file", path);
  await page.getByRole("button", { name: "Restore as a new logbook" }).click();
  await expect(page.getByText("is open. Your other logbooks").first()).toBeVisible();
  await goTo(page, "Log");
  await expect(lapTime(page, 2)).toHaveAccessibleName("Edit lap 2: 1:25.902");
});

test("the driver sees that the logbook has disappeared when its files are damaged, with the date of the last backup", async ({
  baseURL,
  launchOptions,
}) => {
  const folder = mkdtempSync(join(tmpdir(), "lap-ledger-"));
  const options = { ...launchOptions, baseURL: baseURL ?? "", locale: "en-GB" };
  try {
    const first = await chromium.launchPersistentContext(folder, options);
    const page = await first.newPage();
    await open(page);
    await startSession(page, "club hatch", "Varnholt Ring");
    await logLaps(page, ["1:25.118", "1:25.902"]);
    await goTo(page, "Data");
    await savedBackup(page, "Save a backup");
    await page.reload();
    await expect(page.getByText(/^Last backup .*, today:/).first()).toBeVisible();
    await page.waitForTimeout(toBrowserMs);
    await first.close();
    damageStore(folder);

    const second = await chromium.launchPersistentContext(folder, options);
    const again = await second.newPage();
    await again.goto("./");
    await expect(again.getByRole("heading", { name: gonePage })).toBeVisible();
    await expect(again.getByText(/The last backup was saved on \w{3} \d+ \w{3} \d{4}/)).toBeVisible();
    await expect(again.getByRole("button").first()).toHaveText("Begin a new logbook and restore a backup");
    await expect(again.getByText(/Welcome|demo/i)).toHaveCount(0);
    await second.close();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

/** Overwrites the files that say what the browser's store of this profile holds. */
function damageStore(folder: string): void {
  const root = join(folder, "Default", "IndexedDB");
  const stores = readdirSync(root).filter((name) => name.endsWith(".leveldb"));
  expect(stores).not.toEqual([]);
  for (const store of stores)
    for (const name of readdirSync(join(root, store)).filter((file) => /^(CURRENT|MANIFEST)/.test(file)))
      writeFileSync(join(root, store, name), "damaged");
}
