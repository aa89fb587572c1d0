import { entryField, expect, lapTime, logLaps, open, startSession, test } from "../support/journeys.ts";

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

  test("what was just said lies over no place of the open menu, and is gone in the next place", async ({
    page,
  }) => {
    await open(page);
    await page.getByRole("button", { name: "Load the demo logbook" }).click();
    const said = page.getByText("is open. Your other logbooks are on Data.").locator("visible=true").last();
    await expect(said).toBeVisible();
    await page.getByRole("button", { name: "More" }).click();
    await page.getByRole("link", { name: "Rig" }).click();
    await expect(page.getByRole("heading", { level: 1, name: "Rig" })).toBeVisible();
    await expect(page.getByRole("button", { name: "Close" })).toHaveCount(0);
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
