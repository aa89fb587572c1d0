import { expect, type Page } from "@playwright/test";
import { storedRowsOf } from "../support/journeyDatabase.ts";
import { entryField } from "../support/journeys.ts";

declare global {
  interface Window {
    /** The page has not been loaded again since this was set. */
    isOldPage?: boolean;
  }
}

/** The logbook that is open, by the name of its database. */
export const openLogbookOf = (tab: Page) =>
  tab.evaluate(
    () => (JSON.parse(localStorage.getItem("lap-ledger") ?? "{}") as { logbook?: string }).logbook ?? "",
  );

/**
 * The server has the next version now: the first tab is offered it and takes it, the second, with a line half typed, goes
 * along by itself or is told to reload. The line is still there, and every car of the logbook has been migrated.
 */
export async function takeNextVersion([first, second]: readonly [Page, Page], half: string): Promise<void> {
  await entryField(second).pressSequentially(half, { delay: 60 });
  await second.evaluate(() => {
    window.isOldPage = true;
  });
  await first.evaluate(async () => {
    await (await navigator.serviceWorker.getRegistration())?.update();
  });
  const offer = first.getByRole("status").filter({ hasText: "A new version of Lap Ledger is ready" });
  await expect(offer).toBeVisible({ timeout: 60_000 });
  await offer.getByRole("button", { name: "Update" }).click();
  await expect(offer).toBeHidden({ timeout: 30_000 });
  await expect(entryField(first)).toBeVisible({ timeout: 30_000 });
  const reload = second.getByRole("button", { name: "Reload" });
  await expect(async () => {
    if (await reload.isVisible()) await reload.click();
    expect(await second.evaluate(() => window.isOldPage)).toBeUndefined();
  }).toPass({ timeout: 60_000 });
  await expect(entryField(second)).toHaveValue(half, { timeout: 30_000 });
  await expect(async () => {
    const cars = await storedRowsOf(first, await openLogbookOf(first), "cars");
    expect(cars.length).toBeGreaterThan(0);
    for (const car of cars) expect(car).toMatchObject({ wheels: 4 });
  }).toPass({ timeout: 30_000 });
}
