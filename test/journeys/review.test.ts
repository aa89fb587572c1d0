import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import type { Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { expect, open, test } from "../support/journeys.ts";

/** The demo's improving combo, as its generator names it. */
const { combos } = JSON.parse(
  readFileSync(new URL("../../demo-data/truth.json", import.meta.url), "utf8"),
) as { combos: Record<"ringHatch", { comboId: string; name: string }> };
const { comboId, name } = combos.ringHatch;

/** The demo ends on Sunday 22 November 2026; this is the Wednesday after. */
const evening = new Date("2026-11-25T20:00:00+01:00");
const titles = [
  "Am I getting steadier?",
  "Where does the time go?",
  "What was different?",
  "How much did I practise?",
];
/** Charts of the four weeks with all questions open. */
const charts = 10;
const question = (page: Page, title: string) => page.getByRole("button", { name: title });

async function openDemo(page: Page): Promise<void> {
  await page.clock.setFixedTime(evening);
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await page.getByRole("heading", { name: "Start a session" }).waitFor();
}

async function openReview(page: Page, query = "period=4w"): Promise<void> {
  await openDemo(page);
  await page.goto(`./#/review/${comboId}?${query}`);
  await expect(page.getByRole("figure").first()).toBeVisible();
}

async function unfold(page: Page, title: string): Promise<void> {
  const button = question(page, title);
  if ((await button.getAttribute("aria-expanded")) === "false") await button.click();
  await expect(button).toHaveAttribute("aria-expanded", "true");
}

async function unfoldAll(page: Page): Promise<void> {
  for (const title of titles) await unfold(page, title);
  await expect(page.getByRole("figure")).toHaveCount(charts, { timeout: 20_000 });
}

test("the address alone leads to combo and period, before and after a reload", async ({ page }) => {
  await openReview(page, "from=2026-10-01&to=2026-10-31");
  for (const _ of [1, 2]) {
    await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
    await expect(page.getByLabel("First day")).toHaveValue("2026-10-01");
    await expect(page.getByText(/^6 sessions\s·/)).toBeVisible();
    await page.reload();
  }
});

test("the first question and one beside it stand open, the others answer in words and a small picture", async ({
  page,
}) => {
  await openReview(page);
  await expect(page.getByRole("button", { name: /\?$/, expanded: true })).toHaveCount(2);
  for (const hidden of await page.getByRole("button", { name: /\?/, expanded: false }).all())
    await expect(hidden.locator("svg")).toHaveCount(1);
  await expect(question(page, "How much did I practise?")).toContainText("7 sessions, 146 laps");
  await expect(question(page, "Am I getting steadier?")).toContainText(
    "Not getting steadier or less steady so far",
  );
  await unfoldAll(page);
});

test("by keyboard alone: walk the chart to a session, open it, come back, unfold a question", async ({
  page,
}) => {
  await openReview(page, "period=4w&ahead=1");
  const chart = page.getByRole("figure").first();
  await tabTo(page, () => chart.evaluate((one) => one === document.activeElement));
  await page.keyboard.press("End");
  await expect(page.getByText(/Saturday 21 November: usual 1:24\.015/).first()).toBeVisible();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("End");
  await expect(page.getByText(/level .*half of sessions .*9 in 10/).first()).toBeVisible();
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("End");
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(/#\/log\/[0-9a-f-]{36}$/);
  await page.goBack();
  await expect(chart).toBeVisible();
  const steady = question(page, "Am I getting steadier?");
  await tabTo(page, () => steady.evaluate((one) => one === document.activeElement));
  await page.keyboard.press("Enter");
  await expect(
    page.getByRole("figure", { name: /^Not getting steadier or less steady so far/ }),
  ).toBeVisible();
  const sessions = page.getByRole("button", { name: "See the sessions" }).first();
  await sessions.focus();
  await page.keyboard.press("Enter");
  const newest = page.getByRole("link", { name: "Sat 21 Nov 2026" });
  await tabTo(page, () => newest.evaluate((one) => one === document.activeElement));
  await expect(newest).toBeFocused();
});

/** Presses Tab until the condition holds. */
async function tabTo(page: Page, isThere: () => Promise<boolean>): Promise<void> {
  for (let presses = 0; presses < 80; presses++) {
    if (await isThere()) return;
    await page.keyboard.press("Tab");
  }
  throw new Error("80 presses of Tab did not lead there");
}

for (const colorScheme of ["light", "dark"] as const)
  test(`all questions open break no rule of WCAG 2.2 AA, ${colorScheme}`, async ({ page }) => {
    test.setTimeout(120_000);
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await openReview(page);
    await unfoldAll(page);
    await expectAccessible(page, `review, ${colorScheme}`);
  });

for (const [width, text] of [
  [320, "100%"],
  [390, "100%"],
  [390, "200%"],
  [768, "100%"],
  [1280, "100%"],
  [1280, "200%"],
  [1920, "100%"],
] as const)
  test(`nothing runs out of a page ${width} px wide with text at ${text}`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 });
    await openReview(page);
    await page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, text);
    await unfoldAll(page);
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over).toBeLessThanOrEqual(0);
    for (const figure of await page.getByRole("figure").all()) {
      const outside = await figure.evaluate((box) => {
        const { left, right } = box.getBoundingClientRect();
        const words = [...box.querySelectorAll("svg text")];
        return words
          .filter((word) => {
            const place = word.getBoundingClientRect();
            return place.width > 0 && (place.left < left - 8 || place.right > right + 8);
          })
          .map((word) => word.textContent);
      });
      expect(outside).toEqual([]);
    }
  });

test("each chart is one named stop of Tab with one menu behind it, and nothing in it is a stop without a name", async ({
  page,
}) => {
  await openReview(page);
  await unfoldAll(page);
  const stops = await page.getByRole("figure").evaluateAll((figures) =>
    figures.map((figure) => ({
      name: figure.getAttribute("aria-label") ?? "",
      within: figure.querySelectorAll("[tabindex], a, button").length,
    })),
  );
  expect(stops).toHaveLength(charts);
  for (const { name, within } of stops) {
    expect(name.length).toBeGreaterThan(10);
    expect(within, name).toBe(0);
  }
  await expect(page.getByRole("button", { name: /^Table, files: / })).toHaveCount(charts);
  await expect(page.getByRole("button", { name: /^(Table|PNG|SVG|CSV)$/ })).toHaveCount(0);
});

test("looking at a chart moves nothing on the page", async ({ page }) => {
  await openReview(page);
  const chart = page.getByRole("figure").first();
  const below = question(page, "How much did I practise?");
  const box = await chart.boundingBox();
  if (box === null) throw new Error("the chart is drawn");
  const places = new Set<string>();
  for (const share of [0.1, 0.3, 0.5, 0.7, 0.9]) {
    await page.mouse.move(box.x + share * box.width, box.y + box.height / 2);
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    places.add(`${height} ${(await below.boundingBox())?.y}`);
  }
  expect(places.size).toBe(1);
});

for (const [width, height] of [
  [1280, 800],
  [390, 844],
] as const)
  test(`a point that is read by click or by key is told in sight at ${width} by ${height}, and nothing moves`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await openReview(page);
    const chart = page.getByRole("figure").first();
    const told = chart.getByText(/^[A-Z][a-z]+day .*: usual 1:2/);
    const scrolled = () => page.evaluate(() => [window.scrollY, document.documentElement.scrollHeight]);
    const bar = page.getByRole("navigation").first();
    let box = await chart.boundingBox();
    // What stands over the chart comes in late on a busy machine, and would take the point from under the pointer.
    await expect
      .poll(async () => {
        const last = JSON.stringify(box);
        box = await chart.boundingBox();
        return JSON.stringify(box) === last;
      })
      .toBe(true);
    if (box === null) throw new Error("the chart is drawn");
    const before = await scrolled();
    await page.mouse.click(box.x + box.width * 0.6, Math.min(box.y + box.height / 2, height - 90));
    await expect(told).toBeInViewport({ ratio: 1 });
    await expect(told).toContainText("press again to open");
    expect(await scrolled()).toEqual(before);
    await page.mouse.move(0, 0);
    await chart.focus();
    const focused = await scrolled();
    await page.keyboard.press("ArrowLeft");
    await expect(told).toBeInViewport({ ratio: 1 });
    const [words, lower] = [await told.boundingBox(), await bar.boundingBox()];
    if (words === null || lower === null) throw new Error("both are in sight");
    const isUnderBar = words.y < lower.y + lower.height && words.y + words.height > lower.y;
    expect(isUnderBar).toBe(false);
    expect(await scrolled()).toEqual(focused);
  });

test("combo, period and open questions are there again on the next visit", async ({ page }) => {
  await openReview(page);
  await unfold(page, "How much did I practise?");
  await page.goto("./#/log");
  await page.getByRole("heading", { name: "Start a session" }).waitFor();
  await page.goto("./#/review");
  await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
  await expect(page.getByRole("link", { name: "4 weeks" })).toHaveAttribute("aria-current", "true");
  await expect(question(page, "How much did I practise?")).toHaveAttribute("aria-expanded", "true");
});

test("every chart saves as SVG, PNG and CSV with title, axes, units and date", async ({ page }) => {
  test.setTimeout(120_000);
  await openReview(page);
  await unfoldAll(page);
  const menus = page.getByRole("button", { name: /^Table, files: / });
  await expect(menus).toHaveCount(charts);
  for (let at = 0; at < charts; at++) {
    const menu = menus.nth(at);
    const title = ((await menu.getAttribute("aria-label")) ?? "").replace("Table, files: ", "");
    const take = (item: string) => async () => {
      await menu.click();
      await page.getByRole("menuitem", { name: item }).click();
    };
    const svg = await saved(page, take("Save as SVG"));
    const [drawn, size] = await page.evaluate((text) => {
      const parsed = new DOMParser().parseFromString(text, "image/svg+xml");
      const root = parsed.documentElement;
      const words = [...parsed.querySelectorAll("text")].map((one) => one.textContent).join(" ");
      const [width, height] = ["width", "height"].map((side) => Number(root.getAttribute(side)));
      return [
        parsed.querySelector("parsererror") === null ? words : "does not parse",
        { width, height },
      ] as const;
    }, svg.bytes.toString("utf8"));
    expect(drawn).toContain("Wed 25 Nov 2026");
    expect(drawn.replaceAll(/\s+/g, " ")).toContain(title.slice(0, 20));
    expect(svg.name).toMatch(/2026-11-25\.svg$/);
    const png = await saved(page, take("Save as PNG"));
    expect(sizeOfPng(png.bytes)).toEqual({ width: 2 * (size.width ?? 0), height: 2 * (size.height ?? 0) });
    const csv = await saved(page, take("Save as CSV"));
    const [head = "", ...rows] = csv.bytes.toString("utf8").replace("\uFEFF", "").trimEnd().split("\r\n");
    expect(head).toMatch(/_s\b|_percent\b|laps|seconds_a_lap/);
    expect(rows.length).toBeGreaterThan(0);
    expect(csv.name).toMatch(/2026-11-25\.csv$/);
  }
});

async function saved(page: Page, press: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> {
  const download = page.waitForEvent("download");
  await press();
  const file = await download;
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

/** Width and height of a PNG picture (W3C PNG, third edition, 11.2.1), after its picture data have been unpacked. */
function sizeOfPng(bytes: Buffer): { width: number; height: number } {
  expect(bytes.subarray(0, 8).toString("latin1")).toBe("\x89PNG\r\n\x1a\n");
  const data: Buffer[] = [];
  for (let at = 8; at < bytes.length; at += 12 + bytes.readUInt32BE(at))
    if (bytes.toString("latin1", at + 4, at + 8) === "IDAT")
      data.push(bytes.subarray(at + 8, at + 8 + bytes.readUInt32BE(at)));
  const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  const bytesAPixel = { 2: 3, 6: 4 }[bytes[25] ?? 0] ?? 0;
  expect(inflateSync(Buffer.concat(data)).length).toBe(height * (1 + width * bytesAPixel));
  return { width, height };
}

test("on paper the questions stand under what they open, and no bar is printed", async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await openReview(page, "period=12w");
  const chart = page.getByRole("figure", { name: /^Usual lap/ }).first();
  await expect(chart).toBeVisible();
  await page.emulateMedia({ media: "print" });
  await expect(page.getByRole("banner")).toBeHidden();
  const drawn = await chart.boundingBox();
  const asked = await question(page, "Am I getting steadier?").boundingBox();
  expect(asked?.y).toBeGreaterThanOrEqual((drawn?.y ?? 0) + (drawn?.height ?? 0));
  // A sheet is narrow, and there the bar of a phone would stand.
  await page.setViewportSize({ width: 680, height: 1000 });
  await expect(page.getByText("This is the demo")).toBeHidden();
  await expect(page.getByRole("link", { name: "Targets", exact: true })).toBeHidden();
});
