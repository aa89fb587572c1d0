import type { Page } from "@playwright/test";
import { entryField, expect, lapTime, logLaps, open, startSession, test } from "../support/journeys.ts";

const first = Array.from({ length: 24 }, (_, at) => `1:25.${String(100 + at * 7)}`);

/** Laps no other tab types, in the order they are typed in. */
const ownOf = (tab: number) => Array.from({ length: 6 }, (_, at) => `1:2${5 + tab}.${tab}${at}7`);

const timesIn = async (page: Page) =>
  (await page.getByRole("button", { name: /^Edit lap \d+: / }).allTextContents()).map((text) =>
    text.replace(/^Edit lap \d+: /, ""),
  );

const placeOf = async (page: Page, lap: number) => (await lapTime(page, lap).boundingBox())?.y;

/** Types laps one after the other, without waiting for any to be there. */
async function type(page: Page, texts: readonly string[]): Promise<void> {
  await entryField(page).focus();
  for (const text of texts) {
    await page.keyboard.type(text);
    await page.keyboard.press("Enter");
  }
  await expect(entryField(page)).toHaveValue("");
}

for (const [name, width, height] of [
  ["a phone", 390, 844],
  ["a desk", 1280, 600],
] as const)
  test.describe(`on ${name}`, () => {
    test.use({ viewport: { width, height } });

    test("what a tab shows stands still while two others type, and its own newest lap is in sight", async ({
      page,
      context,
    }) => {
      await open(page);
      await startSession(page, "club hatch", "Varnholt Ring");
      await logLaps(page, first);
      const others = [await context.newPage(), await context.newPage()];
      for (const other of others) {
        await open(other);
        await expect(lapTime(other, first.length)).toBeVisible();
      }
      // The driver looks at an early lap, its editor or its row, while laps arrive from elsewhere.
      await lapTime(page, 3).evaluate((time) => time.scrollIntoView({ block: "center" }));
      const before = await placeOf(page, 3);
      await Promise.all(others.map((other, at) => type(other, ownOf(at))));
      const count = first.length + 12;
      for (const tab of [page, ...others]) await expect(lapTime(tab, count)).toHaveCount(1);
      expect(await placeOf(page, 3)).toBe(before);
      await expect(lapTime(page, 3)).toBeInViewport({ ratio: 1 });

      await type(page, ["1:25.999"]);
      await expect(lapTime(page, count + 1)).toBeInViewport({ ratio: 1 });
    });
  });

test("three tabs that type at once show the same, each with its own laps in the order they were typed", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902", "1:25.340"]);
  const tabs = [page, await context.newPage(), await context.newPage()];
  for (const tab of tabs.slice(1)) {
    await open(tab);
    await expect(lapTime(tab, 3)).toBeVisible();
  }
  await Promise.all(tabs.map((tab, at) => type(tab, ownOf(at))));
  for (const tab of tabs) await expect(lapTime(tab, 3 + 18)).toHaveCount(1);
  const [here, ...there] = await Promise.all(tabs.map(timesIn));
  for (const list of there) expect(list).toEqual(here);
  for (const at of tabs.keys()) {
    const own = ownOf(at);
    expect(here?.filter((time) => own.includes(time))).toEqual(own);
  }
});
