import type { Locator, Page } from "@playwright/test";
import { contrast } from "../support/contrast.ts";
import { endRun, entryField, expect, logLaps, open, startSession, test } from "../support/journeys.ts";

/** Five laps about a usual one. */
const about = (ms: number) =>
  [-200, 100, -50, 150, 0].map((off) => {
    const all = ms + off;
    return `1:${(all / 1000 - 60).toFixed(3).padStart(6, "0")}`;
  });

const verdict = (page: Page, run: number) => page.getByRole("region", { name: `Verdict of run ${run}` });
const word = (page: Page, run: number) => verdict(page, run).getByRole("heading");
/** The line under the word. */
const figure = (page: Page, run: number) => word(page, run).locator("xpath=../following-sibling::p[1]");

/** Font size in px, ink and paper as "#rrggbb", as the browser has computed them. */
const drawn = (part: Locator) =>
  part.evaluate((element) => {
    const { fontSize, color } = getComputedStyle(element);
    let under: Element | null = element;
    while (under !== null && /^(transparent|rgba\(.*, 0\))$/.test(getComputedStyle(under).backgroundColor))
      under = under.parentElement;
    const inks = [color, under === null ? "rgb(255, 255, 255)" : getComputedStyle(under).backgroundColor];
    const [ink = "", paper = ""] = inks.map(
      (rgb) =>
        `#${(rgb.match(/\d+/g) ?? [])
          .slice(0, 3)
          .map((part) => Number(part).toString(16).padStart(2, "0"))
          .join("")}`,
    );
    return { size: Number.parseFloat(fontSize), ink, paper };
  });

/** Wholly in view: inside the window, and nothing but the verdict itself lies over its corners. */
async function expectInView(part: Locator): Promise<void> {
  await expect(part).toBeInViewport({ ratio: 1 });
  const over = await part.evaluate((element) => {
    const range = document.createRange();
    range.selectNodeContents(element);
    const { left, right } = range.getBoundingClientRect();
    const { top, bottom } = element.getBoundingClientRect();
    if (left < 0 || right > document.documentElement.clientWidth) return ["the edge of the window"];
    const own = element.closest("section");
    return [left + 1, right - 1]
      .flatMap((x) => [top + 4, bottom - 4].map((y) => document.elementFromPoint(x, y)))
      .filter((hit) => !own?.contains(hit))
      .map((hit) => hit?.outerHTML.slice(0, 120) ?? "nothing");
  });
  expect(over).toEqual([]);
}

/** The metre rule: readable at a metre in two seconds. Contrast by the formula of WCAG 2.2. */
async function expectReadFromAMetre(page: Page, run: number, leastSize: number): Promise<void> {
  for (const part of [word(page, run), figure(page, run)]) {
    await expectInView(part);
    const { size, ink, paper } = await drawn(part);
    expect(size).toBeGreaterThanOrEqual(leastSize);
    expect(contrast(ink, paper)).toBeGreaterThanOrEqual(7);
  }
  for (const text of await verdict(page, run).locator("p, dt, dd, strong, span, h2").all()) {
    if (!(await text.isVisible())) continue;
    const { ink, paper } = await drawn(text);
    expect(contrast(ink, paper), (await text.textContent()) ?? "").toBeGreaterThanOrEqual(4.5);
  }
}

/** A run of tonight and one like it: the second is as usual beside the first. */
async function driveTwo(page: Page): Promise<void> {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, about(84_000));
  await endRun(page);
  await expect(word(page, 1)).toHaveText("5 of 5");
  await logLaps(page, about(84_100));
  await endRun(page);
  await expect(word(page, 2)).toHaveText("as usual");
}

for (const colorScheme of ["light", "dark"] as const)
  test.describe(`on a phone, ${colorScheme}`, () => {
    test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, colorScheme });

    test("word and figure of a verdict are read from a metre, and AS USUAL fits with its shape at 320 px", async ({
      page,
    }) => {
      await driveTwo(page);
      await expect(figure(page, 2)).toHaveText("+0.100 s");
      for (const height of [844, 664]) {
        await page.setViewportSize({ width: 390, height });
        await expectReadFromAMetre(page, 2, 64);
      }
      const shape = verdict(page, 2).locator("svg[data-of='as usual']");
      await page.setViewportSize({ width: 320, height: 664 });
      await expectInView(word(page, 2));
      await expect(shape).toBeInViewport({ ratio: 1 });
      expect((await drawn(word(page, 2))).size).toBeGreaterThanOrEqual(48);
      const [drawnShape, drawnWord] = await Promise.all([shape.boundingBox(), word(page, 2).boundingBox()]);
      expect(drawnWord?.x).toBeGreaterThanOrEqual((drawnShape?.x ?? 0) + (drawnShape?.width ?? 0));
    });
  });

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 664 }, hasTouch: true, isMobile: true });

  test("a run with three spins in eight laps is untidy, and the verdict goes with the next lap", async ({
    page,
  }) => {
    await driveTwo(page);
    await logLaps(page, [...about(82_700), "1:30.000s", "1:31.000s", "s"]);
    await endRun(page);
    await expect(word(page, 3)).toHaveText("untidy");
    await expect(figure(page, 3)).toHaveText("3 of 8");
    await expect(
      verdict(page, 3).getByText("Laps 6, 7 and 8 were lost or had a mistake.", { exact: true }),
    ).toBeAttached();
    await expectReadFromAMetre(page, 3, 64);
    await logLaps(page, ["1:24.300"]);
    await expect(verdict(page, 3)).toBeHidden();
  });
});

test("the big view ends at the first key, and nothing typed is lost", async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await driveTwo(page);
  await expectReadFromAMetre(page, 2, 80);
  await expect(entryField(page)).toBeInViewport({ ratio: 1 });
  await page.getByRole("button", { name: "Big view" }).click();
  const view = page.getByRole("dialog", { name: "Big view" });
  await expect(view.getByRole("heading", { name: "as usual" })).toBeInViewport({ ratio: 1 });
  await page.keyboard.type("1:24.2");
  await expect(view).toBeHidden();
  await expect(entryField(page)).toBeFocused();
  await expect(entryField(page)).toHaveValue("1:24.2");
});
