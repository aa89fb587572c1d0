import { type BrowserContext, expect, type Page } from "@playwright/test";
import { storedRowsOf } from "../support/journeyDatabase.ts";
import { open } from "../support/journeys.ts";
import { diceFrom } from "../support/mutateBackup.ts";
import { Driver } from "./driver.ts";
import { Model, stored } from "./model.ts";

/**
 * A driver who does anything at any time makes so many changes in two tabs, with reloads, killed tabs, a lost network and
 * restores; then the rows in the browser are those of the model. Gives how often each thing was done.
 */
export async function soak(
  context: BrowserContext,
  page: Page,
  { changes, seed }: { readonly changes: number; readonly seed: number },
): Promise<Readonly<Record<string, number>>> {
  await open(page);
  await expect
    .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state))
    .toBe("activated");
  const model = new Model();
  const driver = new Driver(context, [page, await context.newPage()], diceFrom(seed), model);
  await driver.begin();
  while (driver.changes < changes) await driver.step();
  await context.setOffline(false);

  const [tab] = driver.tabs;
  const logbook = await tab.evaluate(
    () => (JSON.parse(localStorage.getItem("lap-ledger") ?? "{}") as { logbook?: string }).logbook ?? "",
  );
  const sessions = await storedRowsOf(tab, logbook, "sessions");
  const runs = await storedRowsOf(tab, logbook, "runs");
  expect(stored(sessions, runs)).toEqual(model.held);
  const ids = runs.flatMap(({ laps }) => (laps as readonly { readonly id: string }[]).map(({ id }) => id));
  expect(new Set(ids).size).toBe(ids.length);
  return { ...driver.deeds, changes: driver.changes };
}
