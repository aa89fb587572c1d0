import type { Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { expect, open, test } from "../support/journeys.ts";

const field = (page: Page, name: string) => page.getByRole("textbox", { name, exact: true });
const caution = (page: Page) => page.getByText(/wrong field of view makes sickness more likely/);
const noSidewaysScroll = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth);

/** Presses Tab until a field has the focus, and counts the presses. */
async function tabTo(page: Page, name: string): Promise<number> {
  for (let tabs = 0; tabs <= 20; tabs += 1) {
    if (await field(page, name).evaluate((element) => element === document.activeElement)) return tabs;
    await page.keyboard.press("Tab");
  }
  throw new Error(`${name} cannot be reached by Tab`);
}

test("from a tape measure to a stored record by keyboard alone, in fewer than 60 keys", async ({ page }) => {
  await open(page, "#/rig?part=screen");
  await expect(field(page, "Diagonal")).toBeVisible();
  let keys = 0;
  const type = async (name: string, text: string) => {
    keys += (await tabTo(page, name)) + text.length;
    await page.keyboard.type(text);
  };
  await type("Diagonal", "27");
  await type("Eye to screen", "60");
  await page.keyboard.press("Enter");
  keys += 1;
  // 27 inches of 16:9 at 60 cm are 52.956° across (test/reference/viewing-geometry).
  await expect(page).toHaveURL(/#\/rig$/);
  await expect(page.getByRole("button", { name: "Undo" })).toBeVisible();
  await expect(
    page.getByText(/59\.77 cm × 33\.62 cm · eye at 60 cm · field of view 53° across/),
  ).toBeVisible();
  test.info().annotations.push({ type: "typing", description: `${keys} keys` });
  expect(keys).toBeLessThan(60);

  // It starts from the record now in force: three of these screens are a few keys more.
  await page.getByRole("link", { name: "The full sheet" }).press("Enter");
  await expect(page.getByText("53.0° across, 31.3° upright")).toBeVisible();
  await page.goBack();
  await page.getByRole("link", { name: "Work out my field of view" }).press("Enter");
  await expect(field(page, "Eye to screen")).toHaveValue("60");
  await page.getByRole("radio", { name: "three" }).focus();
  await page.keyboard.press("Space");
  await tabTo(page, "Side angle");
  await page.keyboard.type("50");
  await page.reload();
  await expect(field(page, "Side angle")).toHaveValue("50");
  await expect(page.getByRole("heading", { name: /^Set the field of view to 53° across/ })).toBeVisible();
  await expectAccessible(page, "field of view of three screens");
  await field(page, "Side angle").press("Enter");
  await expect(page.getByText(/kind of screen one flat to three/).first()).toBeVisible();
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

  test("the caution is in sight at once, and the fields stand one under the other in the order they are read", async ({
    page,
  }) => {
    await open(page, "#/rig?part=screen");
    await page.getByText("three", { exact: true }).tap();
    await expect(caution(page)).toBeInViewport({ ratio: 1 });
    const names = ["Diagonal", "Width", "Height", "Eye to screen", "Frame", "Side angle", "Pixels across"];
    const boxes = await Promise.all(names.map((name) => field(page, name).boundingBox()));
    const drawing = await page.getByRole("img", { name: /^Three screens from above/ }).boundingBox();
    const read = boxes.map((box) => (box?.y ?? 0) * 10 + (box?.x ?? 0));
    expect(read).toEqual([...read].sort((a, b) => a - b));
    expect(boxes[0]?.y).toBeGreaterThan((drawing?.y ?? 0) + (drawing?.height ?? 0));
    // Its answer stands between the drawing and the fields, in sight with the caution.
    const answer = page.getByRole("heading", { name: "The field of view" });
    await expect(answer).toBeInViewport();
    const { y: answered = 0 } = (await answer.boundingBox()) ?? {};
    expect(answered).toBeGreaterThan((drawing?.y ?? 0) + (drawing?.height ?? 0) - 1);
    expect(answered).toBeLessThan(boxes[0]?.y ?? 0);
    expect(await noSidewaysScroll(page)).toBe(true);
    await page.setViewportSize({ width: 320, height: 640 });
    await expect.poll(() => noSidewaysScroll(page)).toBe(true);
    await expectAccessible(page, "field of view on a phone");
  });

  test("a finger on the drawing moves the eye, and the page stays where it is", async ({ page }) => {
    await open(page, "#/rig?part=screen");
    await field(page, "Diagonal").fill("27");
    await field(page, "Eye to screen").fill("65");
    const handle = page.locator("[data-handle]").first();
    await handle.scrollIntoViewIfNeeded();
    const box = (await handle.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const scrolled = await page.evaluate(() => window.scrollY);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - 40, { steps: 4 });
    await page.mouse.up();
    expect(Number(await field(page, "Eye to screen").inputValue())).toBeLessThan(60);
    expect(await page.evaluate(() => window.scrollY)).toBe(scrolled);
  });
});

test("on a desk the lengths are typed on the drawing, and on paper they stand in it as figures", async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await open(page, "#/rig?part=screen");
  await field(page, "Diagonal").fill("27");
  await field(page, "Eye to screen").fill("65");
  const drawing = page.getByRole("img", { name: /^One flat screen from above/ });
  const [around, inside] = [await drawing.boundingBox(), await field(page, "Eye to screen").boundingBox()];
  expect(inside?.y).toBeGreaterThan(around?.y ?? 0);
  expect((inside?.y ?? 0) + (inside?.height ?? 0)).toBeLessThan((around?.y ?? 0) + (around?.height ?? 0));
  await expect(drawing.getByText("65 cm")).toBeHidden();
  await page.emulateMedia({ media: "print" });
  await expect(drawing.getByText("65 cm")).toBeVisible();
  await expect(drawing.getByText("59.8 cm")).toBeVisible();
  await expect(field(page, "Eye to screen")).toBeHidden();
  await expect(page.getByText("The simulator asks for it")).toBeHidden();
});
