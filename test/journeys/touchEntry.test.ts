import type { Locator, Page } from "@playwright/test";
import { Hand } from "../support/journeyHand.ts";
import { entryField, expect, lapTime, open, reading, runBlock, test } from "../support/journeys.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

/** A phone on which the browser's own bars are shown. */
const low = { width: 390, height: 664 };

const keyOf: Readonly<Record<string, string>> = { ":": "colon", ".": "point" };

async function press(hand: Hand, text: string, ...keys: readonly string[]): Promise<void> {
  const pad = reading(hand.page);
  for (const sign of text) await hand.button(keyOf[sign] ?? sign, pad);
  for (const key of keys) await hand.button(key, pad);
}

/** Starts the first session, with the list of tracks closed: on a low page it may lie over the button. */
async function start(page: Page): Promise<void> {
  await open(page);
  await page.getByRole("combobox", { name: "Car" }).fill("club hatch");
  const track = page.getByRole("combobox", { name: "Track layout" });
  await track.fill("Varnholt Ring");
  await track.press("Tab");
  await page.getByRole("button", { name: "Start the session" }).tap();
  await expect(entryField(page)).toBeFocused();
}

async function begin(page: Page, laps: readonly string[]): Promise<Hand> {
  await start(page);
  await page.setViewportSize(low);
  const hand = new Hand(page);
  await hand.laps(laps);
  return hand;
}

const three = ["1:25.118", "1:24.930", "1:24.661"];

test("eight laps with a spin and a cut are typed in at most 48 keys", async ({ page }) => {
  await start(page);
  await page.setViewportSize(low);
  const hand = new Hand(page);
  await press(hand, "125118", "Add");
  await expect(lapTime(page, 1)).toBeVisible();
  await press(hand, "24930", "Add");
  await press(hand, "24661", "Add");
  await expect(lapTime(page, 3)).toBeVisible();
  await press(hand, "4702", "Add");
  // The spin cost ten seconds: the digits are the last ones all the same, and the reading is chosen.
  await press(hand, "8210", "spin", "Add", "1:38.210");
  await expect(lapTime(page, 5)).toHaveAccessibleName("Edit lap 5: 1:38.210");
  await press(hand, "4588", "Add");
  await press(hand, "4410", "cut", "Add");
  await press(hand, "4633", "Add");
  await expect(lapTime(page, 8)).toHaveAccessibleName("Edit lap 8: 1:24.633");
  await expect(runBlock(page, 1).getByRole("row", { name: /^5 / })).toContainText("spin");
  await expect(runBlock(page, 1).getByRole("row", { name: /^7 / })).toContainText("cut");
  test.info().annotations.push({ type: "keys", description: String(hand.taps) });
  expect(hand.taps).toBeLessThanOrEqual(48);
});

test("three laps typed blind after a refused one are stored, and the refused one is one tap away", async ({
  page,
}) => {
  const hand = await begin(page, three);
  await press(hand, "912", "Add");
  await press(hand, "4912", "Add");
  await press(hand, "5012", "Add");
  await press(hand, "4866", "Add");
  for (const [number, time] of [
    [4, "1:24.912"],
    [5, "1:25.012"],
    [6, "1:24.866"],
  ] as const)
    await expect(lapTime(page, number)).toHaveAccessibleName(`Edit lap ${number}: ${time}`);
  await expect(entryField(page)).toHaveValue("");
  await hand.button("Put 912 back into the field");
  await expect(entryField(page)).toHaveValue("912");
});

const box = async (part: Locator) => (await part.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };

for (const [width, height] of [
  [390, 664],
  [844, 390],
] as const)
  test(`at ${width} × ${height} the open pad leaves the strip and the last two laps in view, keys are big enough, and it folds`, async ({
    page,
  }) => {
    const hand = await begin(page, [...three, "1:24.702", "1:24.588", "1:24.640"]);
    await page.setViewportSize({ width, height });
    // The newest lap comes into sight as it is typed.
    await hand.lap("1:24.655");
    const pad = reading(page);
    const strip = runBlock(page, 1).getByRole("figure").first();
    const inView = async () => {
      await expect(lapTime(page, 7)).toBeInViewport({ ratio: 1 });
      await expect(lapTime(page, 6)).toBeInViewport({ ratio: 1 });
      await expect(strip).toBeInViewport({ ratio: 0.9 });
      const [entry, last, first, drawn] = await Promise.all([
        box(pad),
        box(lapTime(page, 7)),
        box(lapTime(page, 6)),
        box(strip),
      ]);
      const isBeside = entry.x > 0;
      if (!isBeside) expect(last.y + last.height).toBeLessThanOrEqual(entry.y + 1);
      else expect(last.x + last.width).toBeLessThanOrEqual(entry.x);
      expect(drawn.y + drawn.height).toBeLessThanOrEqual(first.y + 8);
    };
    await inView();
    for (const name of ["1", "0", "off", "more", "note", "Add", "backspace"]) {
      const key = await box(pad.getByRole("button", { name, exact: true }));
      expect(key.width, name).toBeGreaterThanOrEqual(56);
      expect(key.height, name).toBeGreaterThanOrEqual(height < 480 ? 44 : 56);
    }
    for (const name of ["clear", "hide the keys"]) {
      const key = await box(pad.getByRole("button", { name, exact: true }));
      expect(Math.min(key.width, key.height), name).toBeGreaterThanOrEqual(44);
    }
    await hand.button("more", pad);
    for (const name of ["traffic", "contact", "slow zone", "out lap", "in lap"]) {
      const key = pad.getByRole("button", { name, exact: true });
      await expect(key).toBeInViewport({ ratio: 1 });
      expect(await key.evaluate((one) => one.scrollWidth - one.clientWidth), name).toBeLessThanOrEqual(0);
    }
    await expect(entryField(page)).toBeInViewport({ ratio: 1 });
    await expect(pad.getByRole("button", { name: "Add" })).toBeInViewport({ ratio: 1 });
    await hand.button("more", pad);
    await hand.button("hide the keys", pad);
    await expect(pad.getByRole("button", { name: "7", exact: true })).toBeHidden();
    await expect(entryField(page)).toBeInViewport({ ratio: 1 });
    await hand.tap(entryField(page));
    await expect(pad.getByRole("button", { name: "7", exact: true })).toBeVisible();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  });

test("a lap is put right on the same pad: its time in digits, a remark by its key, and Store", async ({
  page,
}) => {
  const hand = await begin(page, [...three, "1:24.702"]);
  const before = hand.taps;
  await hand.tap(lapTime(page, 2));
  const editor = page.getByRole("textbox", { name: "Lap 2" });
  await expect(editor).toBeFocused();
  expect(await editor.getAttribute("inputmode")).toBe("none");
  await expect(editor).toBeInViewport({ ratio: 1 });
  const keys = page.getByRole("button", { name: "7", exact: true });
  await expect(keys).toHaveCount(1);
  expect((await box(editor)).y + (await box(editor)).height).toBeLessThanOrEqual((await box(keys)).y);
  await hand.button("cut");
  await hand.tap(page.getByRole("button", { name: "Store", exact: true }).first());
  await expect(runBlock(page, 1).getByRole("row", { name: /^2 / })).toContainText("cut");
  expect(hand.taps - before).toBe(3);

  await hand.tap(lapTime(page, 1));
  for (const sign of "25218") await hand.button(sign);
  await hand.tap(page.getByRole("button", { name: "Store", exact: true }).first());
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.218");
});

test("a remembered time is so because the driver says it", async ({ page }) => {
  const hand = await begin(page, three);
  await hand.lap("1:24.9");
  const row = runBlock(page, 1).getByRole("row", { name: /^4 / });
  await expect(row).toContainText("in tenths");
  await hand.tap(lapTime(page, 4));
  await hand.button("From memory");
  await hand.button("Cancel");
  await expect(row).toContainText("from memory");
});
