import type { Page } from "@playwright/test";
import { expect, open, test } from "../support/journeys.ts";

/** What the pages beside the session show on a phone, with the demo's twelve weeks in the book. */
test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, serviceWorkers: "block" });

async function withTheDemo(page: Page, hash: string): Promise<void> {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  await page.goto(`./${hash}`);
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
}

test("what a search finds is in sight, its other fields folded to a line that says what they hold", async ({
  page,
}) => {
  await withTheDemo(page, "#/review/search?remark=spin");
  const folded = page.getByRole("button", { name: /^Remark, focus, tyres, days, lap times/ });
  await expect(folded).toContainText("spin");
  await expect(folded).toHaveAttribute("aria-expanded", "false");
  await page.goto("./#/review/search");
  await page.getByRole("searchbox", { name: "Words" }).fill("tyre");
  await page.getByRole("button", { name: "Search" }).click();
  await expect(
    page
      .getByRole("table", { name: /^Sessions found/ })
      .getByRole("link")
      .first(),
  ).toBeInViewport({ ratio: 1 });
});

test("the button that starts as last time stays under the thumb while tonight’s plan comes in", async ({
  page,
}) => {
  // The script of the plan comes late, as over a slow line.
  await page.route(/Tonight/, async (route) => {
    await new Promise((later) => setTimeout(later, 1500));
    await route.continue();
  });
  await withTheDemo(page, "#/log");
  const button = page.getByRole("button", { name: "Same as last time" });
  await expect(button).toBeVisible();
  const other = page.getByRole("list", { name: "Start with another combo" });
  const [first, below] = [await button.boundingBox(), await other.boundingBox()];
  const plan = page.getByRole("link", { name: "The whole plan" });
  await expect(plan).toHaveCount(0);
  await expect(plan).toBeVisible();
  expect(await button.boundingBox()).toEqual(first);
  expect(await other.boundingBox()).toEqual(below);
  await expect(page.getByRole("table", { name: "Last sessions" }).getByRole("img")).toHaveCount(8);
});

test("what was chosen to compare stays in sight while the list goes by, and over no place of the bar", async ({
  page,
}) => {
  await withTheDemo(page, "#/review");
  await page.getByRole("button", { name: "Compare two sessions" }).click();
  await page.getByRole("button", { name: "Compare Tue 17 Nov 2026" }).click();
  await page
    .getByRole("button", { name: /^Compare Tue 17 Nov 2026 with/ })
    .last()
    .scrollIntoViewIfNeeded();
  const chosen = page.getByText(/^Compare Tue 17 Nov 2026 with … Choose another session/);
  await expect(chosen).toBeInViewport({ ratio: 1 });
  const [bar, places] = [
    await chosen.boundingBox(),
    await page.getByRole("navigation", { name: "Places" }).boundingBox(),
  ];
  expect((bar?.y ?? 0) + (bar?.height ?? 0)).toBeLessThan(places?.y ?? 0);
});

test("one value of the rig is changed from the session in four presses, and the session is there again", async ({
  page,
}) => {
  await withTheDemo(page, "#/log");
  await page.getByRole("button", { name: "Same as last time" }).click();
  await page.getByRole("link", { name: "Something changed" }).click();
  await page.getByRole("link", { name: /^Gain/ }).click();
  const field = page.getByRole("textbox", { name: "Gain" });
  await expect(field).toBeFocused();
  await expect(page.getByRole("textbox")).toHaveCount(1);
  await field.pressSequentially("58");
  await page.getByRole("button", { name: "Store" }).click();
  await expect(page.getByRole("region", { name: "Entry" })).toBeVisible();
});

test("a record of the rig opened from the list of all is gone to, with what its pairs of runs found", async ({
  page,
}) => {
  await withTheDemo(page, "#/rig");
  await page.getByRole("link", { name: "Wed 30 Sep 2026" }).click();
  const title = page.getByRole("heading", { name: "Lower gain" });
  await expect(title).toBeInViewport({ ratio: 1 });
  await expect(title.locator(":focus")).toHaveCount(1);
  await expect(
    page.getByText(/^Faster by 0\.\d\d s, very likely at least 0\.\d\d s$/).first(),
  ).toBeInViewport();
  await page.getByRole("link", { name: "Thu 17 Sep 2026" }).first().click();
  await expect(page.getByRole("heading", { level: 1, name: /Tessemoor/ })).toBeVisible();
});

test("the way from where the time goes leads to the corner to work on first, and its bar stands beside the others", async ({
  page,
}) => {
  await withTheDemo(page, "#/review");
  await page.getByRole("button", { name: /^Where does the time go\?/ }).click();
  await page.getByRole("link", { name: "Which corner to work on first" }).click();
  await expect(page.getByRole("heading", { name: /^Corner \d+ first: / })).toBeInViewport();
  const rows = page.getByRole("list", { name: "Corners in order of seconds" }).locator(":scope > li");
  await expect(rows.first()).toContainText(/Corner \d+.* s/);
  await page
    .getByRole("list", { name: "Corners in lap order" })
    .getByRole("link", { name: /^Corner 5 Sluice/ })
    .click();
  await expect(page.getByRole("img", { name: /^The corner from above/ })).toBeVisible();
});
