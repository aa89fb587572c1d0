import { type BrowserContext, expect, type Page } from "@playwright/test";
import { storedRowsOf } from "../support/journeyDatabase.ts";
import { open } from "../support/journeys.ts";
import { diceFrom } from "../support/mutateBackup.ts";
import { DeviceClock } from "./deviceClock.ts";
import { Driver } from "./driver.ts";
import { Model, stored } from "./model.ts";
import { openLogbookOf } from "./nextVersion.ts";
import { anything, type Odds } from "./odds.ts";

interface Soak {
  readonly seed: number;
  /** What the driver does how often; without it, anything. */
  readonly odds?: Odds;
  /** Stops here. */
  readonly changes?: number;
  readonly kills?: number;
  /** Half way the server goes over to the next version, and the driver with it. */
  readonly swap?: () => void;
}

/**
 * A driver who does anything at any time goes on in two tabs, with reloads, killed tabs, a lost network, restores and a
 * clock that jumps; then the rows in the browser are those of the model, half way and at the end. Gives how often each
 * thing was done.
 */
export async function soak(
  context: BrowserContext,
  page: Page,
  { seed, odds = anything, changes = Number.POSITIVE_INFINITY, kills = Number.POSITIVE_INFINITY, swap }: Soak,
): Promise<Readonly<Record<string, number>>> {
  const clock = new DeviceClock(context);
  await clock.install();
  await open(page);
  await expect
    .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state))
    .toBe("activated");
  const model = new Model();
  const tabs: [Page, Page] = [page, await context.newPage()];
  const driver = new Driver({ context, tabs, clock, dice: diceFrom(seed), model, odds });
  await driver.begin();
  const goOn = async (toChanges: number, toKills: number) => {
    while (driver.changes < toChanges && driver.kills < toKills) await driver.step();
  };
  if (swap !== undefined) {
    await goOn(changes / 2, kills / 2);
    await holdsTheSame(driver.tabs[0], model);
    swap();
    await driver.update();
    await holdsTheSame(driver.tabs[0], model);
  }
  await goOn(changes, kills);
  await context.setOffline(false);
  await clock.setRight();
  await holdsTheSame(driver.tabs[0], model);
  return { ...driver.deeds, changes: driver.changes, kills: driver.kills };
}

/** The browser holds what the model does, and nothing under an id that something else has. */
async function holdsTheSame(tab: Page, model: Model): Promise<void> {
  const logbook = await openLogbookOf(tab);
  const sessions = await storedRowsOf(tab, logbook, "sessions");
  const runs = await storedRowsOf(tab, logbook, "runs");
  expect(stored(sessions, runs)).toEqual(model.held);
  const ids = runs.flatMap(({ laps }) => (laps as readonly { readonly id: string }[]).map(({ id }) => id));
  expect(new Set(ids).size).toBe(ids.length);
}
