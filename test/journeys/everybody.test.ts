import type { Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import {
  endRun,
  entryField,
  expect,
  lapTime,
  logLaps,
  open,
  reading,
  startSession,
  test,
} from "../support/journeys.ts";

/** Log in each of its states, with a word for the report. */
async function throughLog(page: Page, look: (where: string) => Promise<void>): Promise<void> {
  await open(page);
  await look("welcome");
  await page.getByRole("combobox", { name: "Car" }).fill("club hatch");
  await look("a combo being made");
  await startSession(page, "club hatch", "Varnholt Ring", { target: "1:25.000" });
  await look("session without laps");
  await logLaps(page, ["1:25.118", "1:25.902", "1:25.340 / late", "1:25.511", "1:25.700", "1:26.455 f@3"]);
  await expect(page.getByRole("figure").first()).toBeVisible();
  await look("session with laps and chart");
  await entryField(page).fill("123");
  await entryField(page).press("Enter");
  await expect(entryField(page)).toHaveAttribute("aria-invalid", "true");
  await look("entry refused");
  await entryField(page).fill("1:20.000");
  await entryField(page).press("Enter");
  await expect(reading(page).getByRole("alert")).toBeVisible();
  await look("entry asked about");
  await entryField(page).fill("");
  await lapTime(page, 2).click();
  await expect(page.getByRole("textbox", { name: "Lap 2", exact: true })).toBeFocused();
  await look("a lap being edited");
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Figures" }).click();
  await endRun(page);
  await look("between two runs, figures open");
  for (const [button, title] of [
    ["Change run 1", "Run 1"],
    ["Session", "This session"],
    ["Summary run", "A run as a summary"],
    ["End session", "End the session"],
  ] as const) {
    await page.getByRole("button", { name: button, exact: true }).click();
    const dialog = page.getByRole("dialog", { name: title });
    await expect(dialog).toBeVisible();
    await look(title);
    await page.keyboard.press("Escape");
    await expect(dialog).toBeHidden();
    await expect(page.getByRole("button", { name: button, exact: true })).toBeFocused();
  }
  await page.getByRole("button", { name: "Big view", exact: true }).click();
  await expect(page.getByRole("dialog", { name: "Big view" })).toBeVisible();
  await look("big view");
  await page.getByRole("button", { name: "Back to the ledger" }).click();
  await expect(entryField(page)).toBeFocused();
}

for (const colorScheme of ["light", "dark"] as const)
  for (const width of [390, 1280])
    test.describe(`${colorScheme}, ${width} px wide`, () => {
      test.use({ colorScheme, viewport: { width, height: 844 }, hasTouch: width < 600 });
      test("Log breaks no rule of WCAG 2.2 AA in any of its states", async ({ page }) => {
        test.setTimeout(120_000);
        await throughLog(page, (where) => expectAccessible(page, where));
      });
    });

/** Text runs out of the page nowhere: nothing is wider than the page but what scrolls in its own box. */
async function expectNoSidewaysScroll(page: Page, where: string): Promise<void> {
  const over = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth - clientWidth;
  });
  expect(over, where).toBeLessThanOrEqual(0);
}

for (const [name, width, height, textPercent] of [
  ["320 px wide", 320, 640, 100],
  ["a wide page at 400 %", 320, 256, 100],
  ["text at 200 %", 390, 844, 200],
] as const)
  test.describe(name, () => {
    test.use({ viewport: { width, height } });
    test("Log never scrolls sideways", async ({ page }) => {
      await page.addInitScript((percent) => {
        document.addEventListener("DOMContentLoaded", () => {
          document.documentElement.style.fontSize = `${percent}%`;
        });
      }, textPercent);
      await throughLog(page, (where) => expectNoSidewaysScroll(page, where));
    });
  });
