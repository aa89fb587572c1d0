import type { Locator, Page } from "@playwright/test";
import {
  entryField,
  expect,
  lapTime,
  logLaps,
  open,
  reading,
  startSession,
  test,
} from "../support/journeys.ts";

const sizes = [
  { width: 390, height: 844 },
  { width: 844, height: 390 },
  { width: 1280, height: 800 },
];
const places = ["Log", "Review", "Targets", "Rig", "Corners", "Data"] as const;

/** Goes to a place by the bar, on a phone by its menu. */
async function goBy(page: Page, place: (typeof places)[number]) {
  const bar = page.getByRole("navigation", { name: "Places" });
  const link = bar.getByRole("link", { name: place, exact: true });
  await expect(bar.getByRole("link").first()).toBeVisible();
  if (await link.isHidden()) await bar.getByRole("button", { name: /^More/ }).click();
  await link.click();
  await expect(page).toHaveURL(new RegExp(`#/${place.toLowerCase()}`));
}

/** What was said last and can be closed. */
const said = (page: Page) => page.getByRole("button", { name: "Close", exact: true });

/** Whether two parts of the page lie over one another, by a pixel at least. */
async function overlap(one: Locator, other: Locator): Promise<boolean> {
  const [a, b] = await Promise.all([one.boundingBox(), other.boundingBox()]);
  if (a === null || b === null) throw new Error("One of the two is not on the page.");
  return (
    a.x < b.x + b.width - 1 && b.x < a.x + a.width - 1 && a.y < b.y + b.height - 1 && b.y < a.y + a.height - 1
  );
}

for (const viewport of sizes)
  test.describe(`at ${viewport.width} by ${viewport.height}`, () => {
    test.use({ viewport, hasTouch: viewport.width < 1000 });

    test("the demo says what it is in the bar, and nothing lies over any of its places", async ({ page }) => {
      await open(page);
      await page.getByRole("button", { name: "Load the demo logbook" }).click();
      await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
      for (const place of places) {
        await goBy(page, place);
        await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
        await expect(page.getByText("This is the demo")).toBeVisible();
        await expect(page.getByRole("link", { name: "your own logbooks" })).toBeVisible();
        await expect(said(page)).toHaveCount(0);
      }
    });

    test("what was just said lies over no entry line and no key, and is gone in the next place and in the one before", async ({
      page,
    }) => {
      await open(page);
      await startSession(page, "club hatch", "Varnholt Ring");
      await logLaps(page, ["1:25.118", "1:25.902"]);
      await lapTime(page, 1).click();
      await page.getByRole("button", { name: /^Delete/ }).click();
      await expect(said(page)).toBeVisible();
      const notice = said(page).locator("xpath=ancestor::div[2]");
      await expect(notice).toContainText("Undo");
      expect(await overlap(notice, reading(page))).toBe(false);
      await goBy(page, "Targets");
      await expect(said(page)).toHaveCount(0);
      await page.goBack();
      await expect(lapTime(page, 1)).toBeVisible();
      await expect(said(page)).toHaveCount(0);
    });

    test("what was said on a page without an entry line leaves its heading and its main button free", async ({
      page,
    }) => {
      await open(page);
      await page.getByRole("button", { name: "Load the demo logbook" }).click();
      await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
      await goBy(page, "Targets");
      await page
        .getByRole("button", { name: /^Delete/ })
        .first()
        .click();
      await expect(said(page)).toBeVisible();
      await page.evaluate(() => window.scrollTo(0, 0));
      const notice = said(page).locator("xpath=ancestor::div[2]");
      expect(await overlap(notice, page.getByRole("heading", { level: 1 }))).toBe(false);
      expect(await overlap(notice, page.getByRole("button", { name: "Set a target" }))).toBe(false);
      await goBy(page, "Rig");
      await expect(page.getByRole("heading", { level: 1, name: "Rig" })).toBeVisible();
      await page.goBack();
      await expect(page.getByRole("heading", { level: 1, name: "Targets" })).toBeVisible();
      await expect(said(page)).toHaveCount(0);
    });
  });

test("after Undo of a deleted lap the focus is at work again", async ({ page }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  await lapTime(page, 1).click();
  await page.getByRole("button", { name: /^Delete/ }).click();
  const undo = page.getByRole("button", { name: "Undo" });
  await undo.focus();
  await page.keyboard.press("Enter");
  await expect(lapTime(page, 2)).toBeVisible();
  await expect(entryField(page)).toBeFocused();
});
