import type { Locator, Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { expect, open, test } from "../support/journeys.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const caution = (page: Page) => page.getByText("from about 8 N·m can injure");
const records = (page: Page) =>
  page
    .getByRole("list", { name: "Records of the rig and rig tests, the newest first" })
    .getByRole("listitem");

async function demoRig(page: Page): Promise<void> {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  await page.evaluate(() => {
    window.location.hash = "#/rig";
  });
  await expect(page.getByRole("heading", { level: 1, name: "Rig" })).toBeVisible();
}

/** Whole in sight as the page stands, above the bar at the bottom. */
async function expectInSight(page: Page, what: Locator): Promise<void> {
  await expect(what).toBeVisible();
  expect(await page.evaluate(() => scrollY)).toBe(0);
  const bar = await page.getByRole("link", { name: "Targets", exact: true }).boundingBox();
  const box = await what.boundingBox();
  if (box === null || bar === null) throw new Error("nothing is drawn");
  expect(box.y).toBeGreaterThanOrEqual(0);
  expect(box.y + box.height).toBeLessThanOrEqual(bar.y);
}

test("a gain is worked out from the time at the limit by touch, and stored, the caution in sight", async ({
  page,
}) => {
  await demoRig(page);
  await page.getByRole("link", { name: "Work out my gain" }).tap();
  await expectInSight(page, caution(page));
  await page.getByRole("radio", { name: "how long it is at the limit" }).tap();
  await expect(page.getByRole("textbox", { name: "Gain now" })).toHaveValue("54");
  await page.getByRole("textbox", { name: "At the limit" }).fill("5");
  // 0.6505 and 0.7609 of 54 (exponential and half-normal tail, quantiles by R): 35.1 to 41.1.
  await expect(page.getByText("35 to 41 %", { exact: true })).toBeVisible();
  await expectInSight(page, caution(page));
  await expect(page.getByRole("img", { name: /^At 54 % what lies over the limit is cut off/ })).toBeVisible();
  await expectAccessible(page, "the gain worked out");
  await page.reload();
  await expect(page.getByText("35 to 41 %", { exact: true })).toBeVisible();
  await page.getByRole("textbox", { name: "Gain to store" }).fill("40");
  await page.getByRole("button", { name: "Store this gain" }).tap();
  await expect(page).toHaveURL(/#\/rig$/);
  await expect(records(page).first()).toContainText("gain 54 % to 40 %");
  await records(page).first().getByRole("link").first().tap();
  await expect(page.getByRole("heading", { name: "Gain worked out" })).toBeVisible();
  await expect(page.getByText("4.2 N·m", { exact: true })).toBeVisible();
  await expect(page.getByText(/^At 54 %: at the limit for 5 % of the time, wanted 1 %\./)).toBeVisible();
});

test("on the smallest phone the caution begins in sight under the gain and what was seen", async ({
  page,
}) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await demoRig(page);
  await page.getByRole("link", { name: "Work out my gain" }).tap();
  await page.getByRole("radio", { name: "how long it is at the limit" }).tap();
  await expectInSight(page, page.getByRole("textbox", { name: "At the limit" }));
  const bar = await page.getByRole("link", { name: "Targets", exact: true }).boundingBox();
  const box = await caution(page).boundingBox();
  if (box === null || bar === null) throw new Error("nothing is drawn");
  // Two lines of it at least.
  expect(box.y + 40).toBeLessThanOrEqual(bar.y);
});

test("on paper the gain stands with what it was worked out from, without fields", async ({ page }) => {
  await demoRig(page);
  await page.getByRole("link", { name: "Work out my gain" }).tap();
  await page.getByRole("textbox", { name: "Peak seen" }).fill("95");
  const typed = page.getByText(
    /^At 54 %: strongest force 95 % of the limit, 10 % kept free\. Worked out: 51 %\./,
  );
  await expect(typed).toBeHidden();
  await page.emulateMedia({ media: "print" });
  await expect(typed).toBeVisible();
  await expect(caution(page)).toBeVisible();
  await expect(page.getByRole("textbox")).toHaveCount(0);
  await expect(page.getByRole("radio")).toHaveCount(0);
  await expect(page.getByRole("link", { name: "Back to the rig" })).toHaveCount(0);
});

test("the caution is in sight where a gain has changed", async ({ page }) => {
  await demoRig(page);
  await page.goto("./#/rig?field=wheel.gainPercent");
  await expect(page.getByRole("textbox", { name: "Gain" })).toBeFocused();
  await expectInSight(page, caution(page));
});

test("an old record is gone back to in one press, and that is taken back", async ({ page }) => {
  await demoRig(page);
  await records(page).getByRole("link", { name: "Mon 31 Aug 2026" }).tap();
  await page.getByRole("button", { name: "Go back to these settings" }).tap();
  await expect(records(page).first()).toContainText("Back to As it was");
  await expect(records(page).first()).toContainText("gain 54 % to 72 %");
  await expectAccessible(page, "the line of time of the rig");
  await page.getByRole("button", { name: "Undo" }).tap();
  await expect(page.getByText("Back to As it was")).toHaveCount(0);
  await expect(records(page).first()).toContainText("Field of view true to size");
});

test("the change of the field of view reads as no difference, labelled as no test", async ({ page }) => {
  await demoRig(page);
  await records(page).getByRole("link", { name: "Sat 24 Oct 2026" }).tap();
  const verdicts = page.getByRole("list", { name: "Each combo before and after" });
  await expect(verdicts.getByText(/^No difference/)).toHaveCount(2);
  await expect(verdicts.getByText("Not a test: you were also practising.")).toHaveCount(2);
});
