import type { Page } from "@playwright/test";
import { holdOpen, letGo, logbooksThere, savedBackup } from "../support/journeyDatabase.ts";
import {
  entryField,
  expect,
  goTo,
  lapTime,
  logLap,
  logLaps,
  open,
  startSession,
  test,
} from "../support/journeys.ts";

/** All that an address can keep in a browser, by kind. */
const whatIsLeft = (page: Page) =>
  page.evaluate(async () => ({
    databases: (await indexedDB.databases()).map(({ name }) => name),
    caches: await caches.keys(),
    localStorage: { ...localStorage },
    sessionStorage: { ...sessionStorage },
    workers: (await navigator.serviceWorker.getRegistrations()).length,
  }));
const nothing = { databases: [], caches: [], localStorage: {}, sessionStorage: {}, workers: 0 };

async function confirmErase(page: Page) {
  await page.getByRole("button", { name: "Erase everything" }).click();
  const dialog = page.getByRole("alertdialog", { name: "Erase everything" });
  await dialog.getByRole("textbox").fill("erase everything");
  await dialog.getByRole("button", { name: "Erase for good" }).click();
}

test("the driver sees everything erased, after a backup was offered and the words typed, and nothing is left", async ({
  page,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  await entryField(page).fill("1:25.4");
  await expect
    .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state))
    .toBe("activated");
  await goTo(page, "Data");
  const before = await whatIsLeft(page);
  expect(before.caches).not.toEqual([]);
  expect(before.workers).toBe(1);
  await page.getByRole("button", { name: "Erase everything" }).click();
  const dialog = page.getByRole("alertdialog", { name: "Erase everything" });
  await expect(dialog.getByRole("button", { name: "Keep everything" })).toBeFocused();
  const { backup } = await savedBackup(page, "Save a backup first: My logbook");
  expect(backup.counts).toMatchObject({ sessions: 1, runs: 1 });
  await dialog.getByRole("button", { name: "Erase for good" }).click();
  await expect(dialog.getByRole("textbox")).toHaveAccessibleDescription(/Nothing was erased/);
  await expect(dialog.getByRole("textbox")).toBeFocused();
  await dialog.getByRole("textbox").fill("erase everything");
  await dialog.getByRole("button", { name: "Erase for good" }).click();
  await expect(page.getByRole("heading", { name: "Everything is erased" })).toBeFocused();
  expect(await whatIsLeft(page)).toEqual(nothing);
  await page.getByRole("button", { name: "Begin afresh" }).click();
  await expect(page.getByRole("combobox", { name: "Car" })).toBeVisible();
  await expect(page.getByText("disappeared")).toHaveCount(0);
});

test("the driver sees which tab holds up erasing, and it goes on by itself when that is closed", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  const other = await context.newPage();
  await open(other);
  await holdOpen(other);
  await goTo(page, "Data");
  await confirmErase(page);
  await expect(page.getByText("Another tab of Lap Ledger is open and holds a logbook.")).toBeVisible();
  await letGo(other);
  await expect(page.getByRole("heading", { name: "Everything is erased" })).toBeVisible();
  await expect(
    other.getByRole("alert").filter({ hasText: "has disappeared from this browser" }).first(),
  ).toBeVisible();
  await entryField(other).fill("1:25.300");
  await entryField(other).press("Enter");
  await expect(other.getByRole("alert").filter({ hasText: "Not stored: 1:25.300" })).toBeVisible();
  expect(await whatIsLeft(page)).toEqual(nothing);
});

test("removing one logbook never touches another", async ({ page }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  await goTo(page, "Data");
  await page.getByRole("textbox", { name: "Name of a new, empty logbook" }).fill("Second");
  await page.getByRole("button", { name: "Add a logbook" }).click();
  const second = page.getByRole("listitem").filter({ hasText: "Second" });
  await second.getByRole("button", { name: "Open" }).click();
  await expect(second.getByText("open now")).toBeVisible();
  await expect.poll(() => logbooksThere(page)).toHaveLength(2);
  await second.getByRole("button", { name: "Remove" }).click();
  const dialog = page.getByRole("alertdialog", { name: "Remove a logbook" });
  await dialog.getByRole("textbox").fill("remove");
  await dialog.getByRole("button", { name: "Remove for good" }).click();
  await expect(second).toHaveCount(0);
  await expect.poll(() => logbooksThere(page)).toHaveLength(1);
  await goTo(page, "Log");
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
});
