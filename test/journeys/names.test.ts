import { entryField, expect, logLap, open, startSession, test } from "../support/journeys.ts";

const script = '<script>alert("car")</script>';
const picture = '<img src=x onerror=alert("track")>';
const turned = "\u202eneF wolraM\u202c";

test("markup in names and notes is text and nothing else", async ({ page }) => {
  await open(page);
  await startSession(page, script, picture);
  await expect(page.getByRole("heading", { level: 1 })).toContainText(script);
  await expect(page.getByRole("heading", { level: 1 })).toContainText(picture);
  await logLap(page, `1:25.118 / ${script}`);
  await expect(page.getByRole("cell", { name: script })).toBeVisible();
  await page.reload();
  await expect(page.getByRole("cell", { name: script })).toBeVisible();
  expect(await page.evaluate(() => document.querySelectorAll("main img, main script").length)).toBe(0);
});

test("a name written against the direction leaves the figures in their places", async ({ page }) => {
  await open(page);
  await startSession(page, "club hatch", turned);
  await logLap(page, `1:25.118 / ${turned}`);
  const row = page.getByRole("row", { name: /^1 Edit lap 1/ });
  const [number, time] = [
    await row.getByRole("rowheader").boundingBox(),
    await row.getByRole("button").boundingBox(),
  ];
  expect(number?.x).toBeLessThan(time?.x ?? 0);
  await expect(row.getByRole("button")).toHaveAccessibleName("Edit lap 1: 1:25.118");
});

test("a name of 500 characters is refused with its count, one of 120 does not widen the page", async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page);
  await page.getByRole("combobox", { name: "Car" }).fill("x".repeat(500));
  await page.getByRole("combobox", { name: "Track layout" }).fill("Varnholt Ring");
  await page.getByRole("button", { name: "Start the session" }).click();
  await expect(
    page.getByText("The name of the car has 500 characters. Names go up to 120: shorten it."),
  ).toBeVisible();
  await expect(page.getByRole("combobox", { name: "Car" })).toBeFocused();
  await startSession(page, "x".repeat(120), "y".repeat(120));
  await logLap(page, `1:25.118 / ${"z".repeat(500)}`);
  await expect(entryField(page)).toBeFocused();
  const { scroll, width } = await page.evaluate(() => ({
    scroll: document.documentElement.scrollWidth,
    width: document.documentElement.clientWidth,
  }));
  expect(scroll).toBeLessThanOrEqual(width);
});
