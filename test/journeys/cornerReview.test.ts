import type { CDPSession, Locator, Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { Hand } from "../support/journeyHand.ts";
import { expect, open, startSession, test } from "../support/journeys.ts";

/**
 * What a hand takes, in ms, by the keystroke-level model of Card, Moran and Newell (1980), its values from memory: 280 a key for
 * an average typist who is none by trade, 1,350 for making up one's mind, which is done here for every gap and every choice.
 */
const [aKey, aThought] = [280, 1350];

/** Counts the keys pressed and the judgements made. */
class Typist {
  readonly page: Page;
  keys = 0;
  thoughts = 0;

  constructor(page: Page) {
    this.page = page;
  }

  async type(text: string): Promise<void> {
    this.keys += text.length;
    this.thoughts += text.trim().split(/\s+/).length;
    await this.page.keyboard.type(text);
  }

  async press(key: string, times = 1): Promise<void> {
    this.keys += times;
    for (let time = 0; time < times; time += 1) await this.page.keyboard.press(key);
  }

  /** Presses Tab until a control has the focus. */
  async tabTo(control: Locator): Promise<void> {
    for (let tabs = 0; tabs < 12; tabs += 1) {
      if (await control.evaluate((element) => element === document.activeElement)) return;
      await this.press("Tab");
    }
    await expect(control).toBeFocused();
  }

  get seconds(): number {
    return Math.round((this.keys * aKey + this.thoughts * aThought) / 1000);
  }

  note(of: string): void {
    const description = `${of}: ${this.keys} keys, ${this.thoughts} judgements, ${this.seconds} s by hand`;
    test.info().annotations.push({ type: "time", description });
    process.stdout.write(`${description}\n`);
  }
}

const line = (page: Page) => page.getByRole("textbox", { name: "Left at entry, apex and exit" });
const corner = (page: Page, number: number) =>
  page.getByRole("form", { name: new RegExp(`^Corner ${number}\\b`) });

/** Begins a first session, and opens the replay review of its combo. */
async function newcomer(page: Page): Promise<void> {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await page.goto("./#/corners");
  await page.getByRole("link", { name: "replay review", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Which corners?" })).toBeVisible();
}

test("a newcomer gets a first answer from three corners given by number and kind alone, in under 90 seconds by keyboard", async ({
  page,
}) => {
  await newcomer(page);
  const started = Date.now();
  const typist = new Typist(page);
  await typist.tabTo(page.getByRole("textbox", { name: "Corners to look at" }));
  await typist.type("3 5 9");
  await typist.press("Enter");
  for (const [number, gaps, bend, after] of [
    [3, "h . h", 2, 4],
    [5, "h h 1", 1, 3],
    [9, ". . 0.3", 4, 2],
  ] as const) {
    await expect(corner(page, number)).toBeVisible();
    await expect(line(page)).toBeFocused();
    await typist.type(gaps);
    await typist.press("Tab");
    typist.thoughts += 1;
    await typist.press("ArrowRight", bend);
    await typist.press("Tab");
    typist.thoughts += 1;
    await typist.press("ArrowRight", after);
    await typist.press("Enter");
  }
  await expect(page.getByRole("row", { name: /^Change corner 3/ })).toContainText(
    "slow, then a long straight",
  );
  await expect(page.getByRole("button", { name: "Store this review" })).toBeFocused();
  await typist.press("Enter");
  await expect(page.getByRole("heading", { name: /^Corner \d first: about 0\.\d+ s a lap/ })).toBeVisible();
  typist.note(`three corners, ${((Date.now() - started) / 1000).toFixed(1)} s without hands`);
  expect(typist.seconds).toBeLessThan(90);
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByRole("link", { name: "replay review", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Which corners?" })).toBeVisible();
});

test("a ten-corner lap is reviewed by keyboard in under two minutes, through a reload, and changed afterwards", async ({
  page,
}) => {
  await newcomer(page);
  const started = Date.now();
  const typist = new Typist(page);
  await typist.tabTo(page.getByRole("textbox", { name: "Corners to look at" }));
  await typist.type("1-10");
  await typist.press("Enter");
  const typed = [
    "h . 0.3",
    ". . h",
    "",
    "h h 1 bl",
    ". . .",
    "0.25 . h tt",
    "",
    "-0.2 . .",
    "h . . o",
    ". h 0.5 / late on the throttle",
  ];
  for (const [index, gaps] of typed.entries()) {
    await expect(corner(page, index + 1)).toBeVisible();
    await expect(line(page)).toBeFocused();
    await typist.type(gaps);
    if (index === 5) {
      await page.reload();
      await expect(corner(page, 6)).toContainText("6 of 10");
      await expect(line(page)).toHaveValue(gaps);
      await expect(line(page)).toBeFocused();
    }
    await typist.press("Enter");
  }
  await expect(page.getByRole("table", { name: "What the replay showed" })).toBeVisible();
  await expect(page.getByRole("button", { name: "Store this review" })).toBeFocused();
  await expectAccessible(page, "table of a review");
  await typist.press("Enter");
  await expect(page.getByRole("heading", { name: /^Corner \d+ first/ })).toBeVisible();
  typist.note(`ten corners, ${((Date.now() - started) / 1000).toFixed(1)} s without hands`);
  expect(typist.seconds).toBeLessThan(120);

  await page.getByRole("link", { name: "replay review", exact: true }).click();
  // Now those worth most stand ready.
  await expect(page.getByText("1 of 3")).toBeVisible();
  await page.getByRole("button", { name: /^Reviews kept/ }).click();
  await page
    .getByRole("table", { name: /^Reviews kept/ })
    .getByRole("link")
    .click();
  await page.getByRole("button", { name: "Change corner 8" }).click();
  await expect(line(page)).toHaveValue("-0.2 . .");
  await line(page).fill(". . .");
  await line(page).press("Enter");
  await page.getByRole("button", { name: "Store this review" }).click();
  await expect(page.getByText("Corner review changed.").first()).toBeVisible();
});

/** One finger on a drawing, moved straight up the screen, as whoever scrolls does. */
async function swipe(session: CDPSession, slider: Locator, pixels: number, sideways: number): Promise<void> {
  await slider.scrollIntoViewIfNeeded();
  const box = await slider.boundingBox();
  if (box === null) throw new Error("no slider");
  const [x, y] = [box.x + box.width * 0.8, box.y + box.height / 2];
  await session.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [{ x, y }] });
  for (let step = 1; step <= 10; step += 1)
    await session.send("Input.dispatchTouchEvent", {
      type: "touchMove",
      touchPoints: [{ x: x + (sideways * step) / 10, y: y - (pixels * step) / 10 }],
    });
  await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
}

/** One finger on a slider: put down where its car stands, and moved by so many quarters of the car. */
async function drag(session: CDPSession, slider: Locator, quarters: number): Promise<void> {
  await slider.scrollIntoViewIfNeeded();
  const box = await slider.boundingBox();
  if (box === null) throw new Error("no slider");
  const { value, min, max, isReversed, thumb } = await slider.evaluate((input: HTMLInputElement) => {
    const share = Number(getComputedStyle(input).getPropertyValue("--car"));
    return {
      value: Number(input.value),
      min: Number(input.min),
      max: Number(input.max),
      isReversed: getComputedStyle(input).direction === "rtl",
      thumb: share * input.clientWidth,
    };
  });
  const at = (steps: number) => {
    const along = thumb / 2 + ((steps - min) / (max - min)) * (box.width - thumb);
    return isReversed ? box.x + box.width - along : box.x + along;
  };
  const y = box.y + box.height / 2;
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", x: number) =>
    session.send("Input.dispatchTouchEvent", { type, touchPoints: type === "touchEnd" ? [] : [{ x, y }] });
  await touch("touchStart", at(value));
  for (let step = 1; step <= 8; step += 1)
    await touch("touchMove", at(value + ((quarters - value) * step) / 8));
  await touch("touchEnd", at(quarters));
}

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test("corners are reviewed with a finger: the car is dragged on the drawn road, and the words are tapped", async ({
    page,
  }) => {
    await newcomer(page);
    const session = await page.context().newCDPSession(page);
    const hand = new Hand(page);
    await hand.write(page.getByRole("textbox", { name: "Corners to look at" }), "4 7");
    await hand.button("Begin");
    await expect(corner(page, 4)).toBeVisible();
    await expect(line(page)).not.toBeFocused();
    const slider = (name: string) => page.getByRole("slider", { name });
    const top = () => page.evaluate(() => window.scrollY);
    for (const [pixels, sideways] of [
      [200, 0],
      [-200, 4],
      [200, 20],
    ] as const) {
      const from = await top();
      await swipe(session, slider("Road left at the apex"), pixels, sideways);
      await expect.poll(top).not.toBe(from);
      await expect(line(page)).toHaveValue("");
    }
    await drag(session, slider("Road left at entry"), 2);
    await expect(slider("Road left at entry")).toHaveAttribute(
      "aria-valuetext",
      "half a car left at entry (0.9 m)",
    );
    await drag(session, slider("Road left at the apex"), 0);
    await expect(slider("Road left at the apex")).toHaveAttribute(
      "aria-valuetext",
      "nothing left at the apex",
    );
    await drag(session, slider("Road left at exit"), -1);
    await expect(slider("Road left at exit")).toHaveAttribute(
      "aria-valuetext",
      "a quarter of a car over the edge at exit (0.45 m)",
    );
    await expect(line(page)).toHaveValue("h . -0.25");
    await hand.tap(page.getByRole("group", { name: "Braking" }).getByRole("button", { name: "late" }));
    await hand.tap(page.getByText("hairpin"));
    await expect(line(page)).toHaveValue("h . -0.25 bl");
    await expectAccessible(page, "a corner of a review");
    for (const target of await page
      .getByRole("form")
      .getByRole("button")
      .or(page.getByRole("slider"))
      .all()) {
      const box = await target.boundingBox();
      expect(
        box?.height,
        (await target.getAttribute("aria-label")) ?? (await target.textContent()) ?? "",
      ).toBeGreaterThanOrEqual(44);
    }
    await hand.button("Next corner");
    await expect(corner(page, 7)).toBeVisible();
    for (const place of ["entry", "the apex", "exit"])
      await expect(slider(`Road left at ${place}`)).toBeInViewport({ ratio: 1 });
    await drag(session, slider("Road left at exit"), 4);
    await hand.button("To the table");
    await expect(page.getByRole("row", { name: /^Change corner 7/ })).toContainText(
      "a whole car left at exit",
    );
    await hand.button("Store this review");
    await expect(page.getByRole("heading", { name: /^Corner \d first/ })).toBeVisible();
  });

  for (const [width, height] of [
    [320, 640],
    [844, 390],
  ] as const)
    test(`nothing is wider than the page at ${width} × ${height}, and the buttons stay in sight`, async ({
      page,
    }) => {
      await newcomer(page);
      await page.setViewportSize({ width, height });
      await page.getByRole("textbox", { name: "Corners to look at" }).fill("1-12");
      await page.getByRole("button", { name: "Begin" }).tap();
      await expect(corner(page, 1)).toBeVisible();
      // Opened, it stands at its corner already.
      await expect(page.getByRole("slider", { name: "Road left at entry" })).toBeInViewport({ ratio: 1 });
      await page.getByRole("button", { name: "Skip corner 1" }).tap();
      await expect(page.getByRole("button", { name: "Skip corner 2" })).toBeInViewport({ ratio: 1 });
      await expect(page.getByRole("slider", { name: "Road left at entry" })).toBeInViewport({ ratio: 1 });
      const isWider = () => page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
      expect(await isWider()).toBe(false);
      await page.getByRole("button", { name: /^Lap, corners, unit/ }).tap();
      expect(await isWider()).toBe(false);
    });
});
