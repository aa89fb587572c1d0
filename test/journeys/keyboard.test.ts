import type { Locator } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { entryField, expect, lapTime, open, test } from "../support/journeys.ts";

/** Presses Tab until a control has the focus. */
async function tabTo(control: Locator): Promise<void> {
  for (let tabs = 0; tabs < 60; tabs += 1) {
    if (await control.evaluate((element) => element === document.activeElement)) return;
    await control.page().keyboard.press("Tab");
  }
  await expect(control).toBeFocused();
}

/** Three laps are written out, then the last digits do; the ninth is a new best by a few tenths and wants no second Enter. */
const typed = ["125118", "25902", "26340", "5488", "6011", "5702", "5350", "6204", "4912", "5266"];
const shown = [
  "1:25.118",
  "1:25.902",
  "1:26.340",
  "1:25.488",
  "1:26.011",
  "1:25.702",
  "1:25.350",
  "1:26.204",
  "1:24.912",
  "1:25.266",
];

test("the whole evening goes by keyboard, ten laps in sixty keys", async ({ page }) => {
  await open(page);
  await expectAccessible(page, "welcome");
  const car = page.getByRole("combobox", { name: "Car" });
  await tabTo(car);
  await page.keyboard.type("club hatch");
  await page.keyboard.press("Tab");
  await page.keyboard.type("Varnholt Ring");
  await page.keyboard.press("Enter");
  await expect(entryField(page)).toBeFocused();

  let keys = 0;
  const press = async (key: string) => {
    keys += 1;
    await page.keyboard.press(key);
  };
  for (const [index, text] of typed.entries()) {
    for (const digit of text) await press(digit);
    await press("Enter");
    await expect(entryField(page)).toHaveValue("");
    await expect(lapTime(page, index + 1)).toHaveAccessibleName(`Edit lap ${index + 1}: ${shown[index]}`);
    await expect(entryField(page)).toBeFocused();
  }
  test.info().annotations.push({ type: "key presses for ten laps", description: String(keys) });
  expect(keys).toBeLessThanOrEqual(60);
  await expectAccessible(page, "ten laps");

  await tabTo(lapTime(page, 3));
  await page.keyboard.press("Enter");
  await expect(page.getByRole("textbox", { name: "Lap 3", exact: true })).toBeFocused();
  await page.keyboard.type("1:26.430");
  await page.keyboard.press("Enter");
  await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:26.430");
  await expect(lapTime(page, 3)).toBeFocused();
  await page.keyboard.press("Enter");
  await tabTo(page.getByRole("button", { name: "Delete", exact: true }));
  await page.keyboard.press("Enter");
  await expect(lapTime(page, 10)).toBeHidden();
  await expect(entryField(page)).toBeFocused();
  await page.keyboard.press("Control+z");
  await expect(lapTime(page, 10)).toBeVisible();

  await tabTo(page.getByRole("button", { name: "End run" }));
  await page.keyboard.press("Enter");
  await expect(page.getByRole("button", { name: "End run" })).toBeHidden();
  await expect(entryField(page)).toBeFocused();
  await tabTo(page.getByRole("button", { name: "End session" }));
  await page.keyboard.press("Enter");
  const dialog = page.getByRole("dialog", { name: "End the session" });
  await expect(dialog.getByRole("textbox", { name: /^Note to yourself/ })).toBeFocused();
  await page.keyboard.press("Escape");
  await expect(page.getByRole("button", { name: "End session" })).toBeFocused();
  await page.keyboard.press("Enter");
  await page.keyboard.type("brake later for corner 5");
  await tabTo(dialog.getByRole("button", { name: "End the session" }));
  await page.keyboard.press("Enter");
  await expect(page.getByRole("button", { name: /^Go on with (run|this)/ })).toBeVisible();
  await expect(page.getByRole("heading", { level: 1, name: "club hatch" })).toBeFocused();
  await tabTo(page.getByRole("button", { name: "Back to Log" }));
  await page.keyboard.press("Enter");
  await expect(page.getByRole("blockquote")).toHaveText("brake later for corner 5");
});
