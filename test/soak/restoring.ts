import { expect, type Page } from "@playwright/test";
import { savedBackup } from "../support/journeyDatabase.ts";
import { chooseFile } from "../support/journeyDevices.ts";
import { goTo } from "../support/journeys.ts";

/**
 * Saves a backup and opens what is restored from it. Rows dated after tomorrow, by a clock that stood ahead in mid-session,
 * go aside there; the driver puts each back. Gives how many.
 */
export async function restoreFromBackup(tab: Page): Promise<number> {
  await goTo(tab, "Data");
  const { path } = await savedBackup(tab, "Save a backup");
  await chooseFile(tab, "Choose a backup file", path);
  await tab.getByRole("button", { name: /^Restore (as a new logbook|without )/ }).click();
  await expect(tab.getByText("is open. Your other logbooks").first()).toBeVisible({ timeout: 30_000 });
  await tab.reload();
  await expect(tab.getByRole("region", { name: "Restore" })).toBeVisible();
  return putAllBack(tab);
}

/** Puts back every row set aside: sessions first, what belongs to them after. */
async function putAllBack(tab: Page): Promise<number> {
  const aside = tab.getByRole("listitem").filter({ has: tab.getByRole("button", { name: "Put back" }) });
  const all = tab.getByRole("button", { name: "Put back" });
  const sessions = aside.filter({ hasText: /^session/ });
  let count = 0;
  while (await all.first().isVisible()) {
    const left = await all.count();
    const first = (await sessions.count()) > 0 ? sessions.first() : aside.first();
    await first.getByRole("button", { name: "Put back" }).click();
    await expect(all).toHaveCount(left - 1);
    count += 1;
  }
  return count;
}
