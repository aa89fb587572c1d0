import { expect, open, test } from "../support/journeys.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

test("a table wider than the phone fades out where it goes on, and scrolls by key", async ({ page }) => {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  await page.goto("./#/review");
  await page
    .getByRole("button", { name: /^Table, files: / })
    .first()
    .click();
  await page.getByRole("menuitem", { name: "Show as a table" }).click();
  const table = page.getByRole("region", { name: /^Usual lap faster by/ });
  await expect(table).toHaveCSS("mask-image", /linear-gradient/);
  await table.focus();
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => table.evaluate((box) => box.scrollLeft)).toBeGreaterThan(0);
  await table.evaluate((box) => {
    box.scrollLeft = box.scrollWidth;
    (document.activeElement as HTMLElement).blur();
  });
  await expect(table).toHaveCSS("mask-image", "none");
});
