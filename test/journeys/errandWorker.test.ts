import type { Page } from "@playwright/test";
import { savedBackup } from "../support/journeyDatabase.ts";
import { chooseFile } from "../support/journeyDevices.ts";
import { expect, goTo, lapTime, logLap, open, startSession, test } from "../support/journeys.ts";

/** The workers that do errands; they run the same script as the one for figures. */
async function errandWorkers(page: Page): Promise<readonly string[]> {
  const names = await Promise.all(
    page.workers().map((worker) => worker.evaluate(() => self.name).catch(() => "ended")),
  );
  return names.filter((name) => name === "errand");
}

async function lookAt(page: Page, path: string): Promise<void> {
  await chooseFile(page, /Choose (a backup|another) file/, path);
  await expect(page.getByRole("table", { name: "What the backup holds" })).toBeVisible();
}

test("a file that is looked at is held once, and let go when the driver has decided", async ({ page }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  await goTo(page, "Data");
  const { path } = await savedBackup(page, "Save a backup");
  await expect.poll(() => errandWorkers(page)).toHaveLength(0);

  await lookAt(page, path);
  expect(await errandWorkers(page)).toHaveLength(1);
  await lookAt(page, path);
  await expect.poll(() => errandWorkers(page)).toHaveLength(1);
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect.poll(() => errandWorkers(page)).toHaveLength(0);

  await lookAt(page, path);
  await goTo(page, "Log");
  await expect.poll(() => errandWorkers(page)).toHaveLength(0);

  await goTo(page, "Data");
  await lookAt(page, path);
  await page.getByRole("button", { name: "Restore as a new logbook" }).click();
  await expect(page.getByText("is open. Your other logbooks").first()).toBeVisible();
  await expect.poll(() => errandWorkers(page)).toHaveLength(0);
  await goTo(page, "Log");
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
});
