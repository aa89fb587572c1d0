import type { Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { expect, open, test } from "../support/journeys.ts";
import { readPdf } from "../support/pdfText.ts";

const whole = (page: Page) => page.getByRole("region", { name: "The whole session" });
const runs = (page: Page) => whole(page).getByRole("heading", { level: 3 });

/** The demo's combo that improves, on the page of its next session. */
async function plan(page: Page): Promise<void> {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  await page.goto("./#/targets?part=plan");
  await page.getByRole("button", { name: "Another combo" }).click();
  await page.getByRole("link", { name: "Varnholt Ring · club hatch" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Varnholt Ring · club hatch" })).toBeVisible();
  await expect(page.getByRole("heading", { name: "What to do next" })).toBeVisible();
}

/** Loads the page anew; the runs are as they were. */
async function reloaded(page: Page): Promise<void> {
  const before = await runs(page).allTextContents();
  await page.reload();
  await expect(runs(page)).toHaveText(before);
}

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test("a plan is drafted, changed, reordered, kept and taken, and stands over a reload at each step", async ({
    page,
  }) => {
    test.setTimeout(180_000);
    await plan(page);
    const drafted = await runs(page).allTextContents();
    expect(drafted.length).toBeGreaterThanOrEqual(3);
    await expectAccessible(page, "the draft");
    const first = page.getByRole("region", { name: "What to do next" });
    await first.getByRole("button", { name: /^What this rests on/ }).tap();
    await expect(first.getByText(/measured on you/)).toBeVisible();
    await reloaded(page);

    // Half typed, over a reload; then stored.
    const [opening = "", ...others] = drafted;
    await whole(page)
      .getByRole("button", { name: `Edit: ${opening}` })
      .tap();
    await page.getByRole("textbox", { name: "What it is for" }).fill("Slow laps, wide lines");
    await expectAccessible(page, "a run being changed");
    await page.reload();
    await expect(page.getByRole("textbox", { name: "What it is for" })).toHaveValue("Slow laps, wide lines");
    await page.getByRole("textbox", { name: "Laps", exact: true }).fill("4");
    await page.getByRole("button", { name: "Store changes" }).tap();
    await expect(runs(page)).toHaveText(["Slow laps, wide lines", ...others]);
    await expect(whole(page).getByText("4 laps driven")).toBeVisible();
    await reloaded(page);

    await whole(page).getByRole("button", { name: "Down: Slow laps, wide lines" }).tap();
    await expect(runs(page).nth(1)).toHaveText("Slow laps, wide lines");
    await reloaded(page);

    await page.getByRole("button", { name: "Add a drill" }).tap();
    await page.getByRole("combobox", { name: "What is counted" }).selectOption("Exits without wheelspin");
    await page.getByRole("textbox", { name: /^Corner/ }).fill("7");
    await page.getByRole("button", { name: "Add it" }).tap();
    await expect(runs(page).last()).toHaveText("Exits without wheelspin, corner 7");
    await expect(whole(page).getByText("8 of 10 exits without wheelspin")).toBeVisible();
    await reloaded(page);

    // Kept under a name, put away for the draft, and taken again.
    const mine = await runs(page).allTextContents();
    await page.getByRole("button", { name: /^Templates/ }).tap();
    await page.getByRole("button", { name: "Keep this plan as a template" }).tap();
    await page.getByRole("textbox", { name: "Name of the template" }).fill("Wide lines");
    await page.reload();
    await expect(page.getByRole("textbox", { name: "Name of the template" })).toHaveValue("Wide lines");
    await page.getByRole("button", { name: "Keep it" }).tap();
    await expect(page.getByRole("heading", { name: "Wide lines", exact: true })).toBeVisible();
    await page.getByRole("button", { name: "Draft it anew" }).tap();
    await expect(runs(page)).toHaveText(drafted);
    await reloaded(page);
    await page.getByRole("button", { name: /^Templates/ }).tap();
    await page.getByRole("button", { name: "Take: Wide lines" }).tap();
    await expect(runs(page)).toHaveText(mine);
    await reloaded(page);

    await whole(page).getByRole("button", { name: "Take out: Exits without wheelspin, corner 7" }).tap();
    await expect(runs(page)).toHaveCount(mine.length - 1);
    await page.getByRole("button", { name: "Undo" }).tap();
    await expect(runs(page)).toHaveText(mine);
    await reloaded(page);
  });
});

test("a plan is made by the keyboard alone, and the focus goes with the run that is moved", async ({
  page,
}) => {
  await plan(page);
  const [opening = "", second = ""] = await runs(page).allTextContents();
  const down = page.getByRole("button", { name: `Down: ${opening}` });
  await down.focus();
  await page.keyboard.press("Enter");
  await expect(runs(page).nth(1)).toHaveText(opening);
  await expect(down).toBeFocused();
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Enter");
  await expect(runs(page).first()).toHaveText(opening);
  await expect(down).toBeFocused();
  await page.getByRole("button", { name: `Edit: ${second}` }).press("Enter");
  await expect(page.getByRole("textbox", { name: "What it is for" })).toBeFocused();
  await page.keyboard.press("ControlOrMeta+A");
  await page.keyboard.type("My own run");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("button", { name: "Edit: My own run" })).toBeFocused();
  const minutes = page.getByRole("textbox", { name: "Minutes you have" });
  await minutes.fill("20");
  await minutes.press("Enter");
  await expect(page.getByText(/more than the 20\smin you have$/)).toBeVisible();
});

test("on paper a plan is one sheet with a box for each lap", async ({ page }) => {
  await plan(page);
  const laps = await whole(page)
    .getByText(/^\d+ laps, /)
    .allTextContents();
  await page.emulateMedia({ media: "print" });
  await expect(page.locator("main").getByRole("button")).toHaveCount(0);
  await expect(page.getByRole("heading", { name: "What to do next" })).toBeHidden();
  await expect(page.getByRole("heading", { name: "What came of the last plan" })).toBeHidden();
  await expect(runs(page).first()).toBeVisible();
  const boxes = whole(page).locator("[data-box]");
  const planned = laps.reduce((sum, text) => sum + Number.parseInt(text, 10), 0);
  await expect(boxes).toHaveCount(planned);
  await expect(boxes.first()).toBeVisible();
  for (const format of ["A4", "Letter"]) expect(readPdf(await page.pdf({ format })).pages, format).toBe(1);
});
