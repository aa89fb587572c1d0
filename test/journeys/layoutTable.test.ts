import type { Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { expect, open, startSession, test } from "../support/journeys.ts";

test.use({ serviceWorkers: "block" });

/** What is known of the layout driven first, where nothing is known yet. */
async function openLayout(page: Page): Promise<void> {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await page.goto("./#/corners");
  await page.getByRole("link", { name: "layout and car" }).click();
  await expect(page.getByRole("heading", { name: "Corners in lap order" })).toBeVisible();
}

const cell = (page: Page, name: string) => page.getByRole("textbox", { name, exact: true });

/** Between two keys of someone who types with a few fingers, ms. */
const keyMs = 150;

/** Turns, kind of bend, what follows and sector of ten corners, as short as they may be typed. */
const ten = [
  "r h l 1",
  "l s n 1",
  "r s m 1",
  "l k l 1",
  "r m s 2",
  "l f m 2",
  "r h 650 2",
  "l m n 3",
  "r m s 3",
  "r f l 3",
];

test("a ten-corner layout is written down by keyboard alone in one go", async ({ page }) => {
  test.setTimeout(90_000);
  await openLayout(page);
  await page.getByRole("textbox", { name: "Corners of a lap" }).focus();
  const began = Date.now();
  await page.keyboard.type("10", { delay: keyMs });
  await page.keyboard.press("Enter");
  await expect(cell(page, "Name, corner 1")).toBeFocused();
  await page.keyboard.press("Tab", { delay: keyMs });
  for (const [at, corner] of ten.entries()) {
    await expect(cell(page, `Turns, corner ${at + 1}`)).toBeFocused();
    for (const [place, word] of corner.split(" ").entries()) {
      if (place > 0) await page.keyboard.press("Tab", { delay: keyMs });
      await page.keyboard.type(word, { delay: keyMs });
    }
    await page.keyboard.press("Enter", { delay: keyMs });
  }
  await expect(cell(page, "Sector, corner 10")).toHaveValue("3");
  await expect(cell(page, "Kind of bend, corner 10")).toHaveValue("fast");
  const seconds = (Date.now() - began) / 1000;
  process.stdout.write(`ten corners by keyboard, one key in ${keyMs} ms: ${seconds.toFixed(0)} s\n`);
  expect(seconds).toBeLessThan(60);

  await page.reload();
  await expect(page.getByText("10 corners", { exact: true })).toBeVisible();
  await expect(cell(page, "What follows, corner 7")).toHaveValue("650 m");
  await expect(cell(page, "What follows, corner 2")).toHaveValue("none");
  await expect(cell(page, "Number, new corner")).toHaveValue("11");
});

test("what cannot be read stands in its cell after a reload, and a row is taken back by undo", async ({
  page,
}) => {
  await openLayout(page);
  const kind = cell(page, "Kind of bend, corner 1");
  await kind.focus();
  await page.keyboard.type("twisty");
  await page.keyboard.press("Tab");
  await expect(page.getByText(/“twisty” is none of the words it may be\. Write hairpin/)).toBeVisible();
  await expectAccessible(page, "the table with something wrong in it");
  await page.reload();
  await expect(kind).toHaveValue("twisty");
  await kind.fill("kink");
  await kind.press("Enter");
  await expect(page.getByRole("paragraph").filter({ hasText: "Corner 1 added." })).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByRole("textbox", { name: "Corners of a lap" })).toBeVisible();
  await expect(kind).toHaveValue("");
});

test("a table out of a spreadsheet, pasted into a cell, is looked at and stored in one go", async ({
  page,
}) => {
  await openLayout(page);
  await cell(page, "Name, corner 1").focus();
  await page.evaluate(() => {
    const clipboard = new DataTransfer();
    clipboard.setData(
      "text/plain",
      "turn;kind;straight;min speed (mph);radius\n1;h;250;45;12,5\n2;twisty;long;;\n",
    );
    const event = new ClipboardEvent("paste", { clipboardData: clipboard, bubbles: true, cancelable: true });
    document.activeElement?.dispatchEvent(event);
  });
  const dialog = page.getByRole("dialog", { name: "Corners from a spreadsheet" });
  await expect(dialog).toContainText("1 corner read, something wrong in 1 line: it stays out whole.");
  await expect(dialog.getByRole("table", { name: "Read as" })).toContainText(
    "hairpin · what follows 250 m · lowest speed 72.4 km/h · radius 12.5 m",
  );
  await expectAccessible(page, "corners from a spreadsheet");
  await dialog.getByRole("button", { name: "Store 1 corner" }).click();
  await expect(cell(page, "What follows, corner 1")).toHaveValue("250 m");
  await expect(cell(page, "Lowest speed, corner 1")).toHaveValue("72.4");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByRole("textbox", { name: "Corners of a lap" })).toBeVisible();
});

for (const width of [390, 320])
  test(`at ${width} px each corner opens as a form, and nothing is wider than the page`, async ({
    browser,
  }) => {
    const context = await browser.newContext({
      viewport: { width, height: 844 },
      hasTouch: true,
      isMobile: true,
      serviceWorkers: "block",
    });
    const page = await context.newPage();
    await openLayout(page);
    await page.getByRole("textbox", { name: "Corners of a lap" }).fill("3");
    await page.getByRole("button", { name: "Number them" }).tap();
    await page.getByRole("button", { name: /^1/ }).tap();
    for (const [corner, kind] of [
      [1, "hairpin"],
      [2, "slow"],
      [3, "kink"],
    ] as const) {
      const form = page.getByRole("form", { name: `Corner ${corner}` });
      await form.getByText("right", { exact: true }).tap();
      await form.getByText(kind, { exact: true }).tap();
      await form.getByText("long", { exact: true }).tap();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      if (corner === 1) await expectAccessible(page, "a corner on a phone");
      await form.getByRole("button", { name: "Next corner" }).tap();
    }
    await expect(page.getByRole("form", { name: "Corner 4" })).toBeVisible();
    await expect(page.getByRole("button", { name: /^3/ })).toContainText("right · kink · then long");
    await context.close();
  });
