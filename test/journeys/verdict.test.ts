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

/** What else is read at a glance, without scrolling: the sentence and what to do next; a PB where the run brought one. */
async function expectToldInView(page: Page, run: number, ...told: readonly RegExp[]): Promise<void> {
  for (const text of [/^Next:/, ...told]) await expectInView(verdict(page, run).getByText(text).first());
}

/** Two first runs of a combo: nothing can tell yet whether the second is more than chance. */
async function driveTwo(page: Page): Promise<void> {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, about(84_000));
  await endRun(page);
  await expect(word(page, 1)).toHaveText("5 of 5");
  await logLaps(page, about(83_900));
  await endRun(page);
  await expect(word(page, 2)).toHaveText("5 of 5");
  await expect(figure(page, 2)).toHaveText("clean");
}

/** A run of tonight after six evenings like it. */
async function driveAsUsual(page: Page): Promise<void> {
  await open(page, "#/data");
  const rows = [5, 10, 15, 20, 25, 30].flatMap((daysAgo) => {
    const date = new Date(Date.now() - daysAgo * 86_400_000).toISOString().slice(0, 10);
    return about(84_000 + (daysAgo % 10 === 0 ? 100 : -100)).map(
      (time) => `${date},club hatch,Varnholt Ring,${time}`,
    );
  });
  const part = page.getByRole("region", { name: "Import laps" });
  const asked = page.waitForEvent("filechooser");
  await part.getByRole("button", { name: /^Choose a table/ }).click();
  const text = ["date,car,track,time", ...rows].join("\n");
  await (await asked).setFiles({ name: "laps.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
  await part.getByRole("button", { name: "Import 30 laps" }).click();
  await expect(page.getByText("30 laps imported in 6 sessions.")).not.toHaveCount(0);
  await open(page, "#/log");
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:23.700", "1:24.350", "1:23.900", "1:24.400", "1:24.050"]);
  await endRun(page);
  await expect(word(page, 1)).toHaveText("as usual");
}

/** The sizes at which all of a verdict is read without scrolling. */
const sizes = [
  [390, 844],
  [390, 664],
  [844, 390],
] as const;

for (const colorScheme of ["light", "dark"] as const)
  test.describe(`on a phone, ${colorScheme}`, () => {
    test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, colorScheme });

    test("word, figure, sentence and what to do next are read from a metre, and AS USUAL fits with its shape at 320 px", async ({
      page,
    }) => {
      test.setTimeout(120_000);
      await driveAsUsual(page);
      await expect(figure(page, 1)).toHaveText(/^[+−±]0\.\d\d s$/);
      for (const [width, height] of sizes) {
        await page.setViewportSize({ width, height });
        await expectReadFromAMetre(page, 1, 64);
        await expectToldInView(page, 1, /^May be chance/);
      }
      const shape = verdict(page, 1).locator("svg[data-of='as usual']");
      await page.setViewportSize({ width: 320, height: 640 });
      await expectInView(word(page, 1));
      await expectToldInView(page, 1, /^May be chance/);
      await expect(shape).toBeInViewport({ ratio: 1 });
      expect((await drawn(word(page, 1))).size).toBeGreaterThanOrEqual(48);
      const [drawnShape, drawnWord] = await Promise.all([shape.boundingBox(), word(page, 1).boundingBox()]);
      expect(drawnWord?.x).toBeGreaterThanOrEqual((drawnShape?.x ?? 0) + (drawnShape?.width ?? 0));
    });
  });

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 664 }, hasTouch: true, isMobile: true });

  test("a run that nothing can test is counted, with its shape, its PB and what is missing, whatever was refused before it ended", async ({
    page,
  }) => {
    await driveTwo(page);
    await logLaps(page, about(83_800));
    for (const refused of ["123", "4567890"]) {
      await entryField(page).pressSequentially(refused);
      await entryField(page).press("Enter");
      await expect(entryField(page)).toHaveAttribute("aria-invalid", "true");
    }
    await endRun(page);
    await expect(word(page, 3)).toHaveText("5 of 5");
    await expect(page.getByRole("button", { name: "Put 123 back into the field" })).toBeVisible();
    await expect(page.getByText("Where does 4567890 belong?")).toBeVisible();
    for (const [width, height] of [
      [390, 844],
      [390, 664],
    ] as const) {
      await page.setViewportSize({ width, height });
      await expectReadFromAMetre(page, 3, 64);
      await expectToldInView(page, 3, /is a new PB/, /^Faster or slower can be told/);
      await expect(verdict(page, 3).locator("svg[data-of='too few']")).toBeInViewport({ ratio: 1 });
    }
    await page.getByRole("button", { name: "Big view" }).click();
    await expect(page.getByRole("dialog", { name: "Big view" })).toBeVisible({ timeout: 1000 });
    await page.getByRole("button", { name: "Back to the ledger" }).click();
    await expect(entryField(page)).toHaveValue("4567890");
    await expect(page.getByText(/^1:23\.700 is a new PB/)).toHaveCount(0);
    await expect(page.getByText(/^1:23\.700 was a new PB/)).toBeAttached();
  });

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

for (const [width, height] of [
  [320, 640],
  [390, 844],
  [844, 390],
  [1280, 800],
] as const)
  test(`at ${width} × ${height} the big view has word, strip and all that is told, and nothing is cut at its edges`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await driveTwo(page);
    await page.evaluate(() => window.scrollTo(0, 0));
    await page.getByRole("button", { name: "Big view" }).click();
    const view = page.getByRole("dialog", { name: "Big view" });
    await expect(view.getByRole("figure", { name: /^Run 2: 5 laps/ })).toBeInViewport({ ratio: 0.9 });
    await expect(view.getByText("clean", { exact: true })).toBeInViewport({ ratio: 1 });
    await expect(view.getByText(/^Next:/)).toBeInViewport({ ratio: 1 });
    const beyond = await view.evaluate((element) => {
      const edge = Number.parseFloat(getComputedStyle(element).paddingRight);
      const right = element.getBoundingClientRect().right - edge + 1;
      return [...element.querySelectorAll("h2, p, dl, dt, dd, figure, svg, button")]
        .filter((part) => part.getBoundingClientRect().right > right)
        .map((part) => part.outerHTML.slice(0, 80));
    });
    expect(beyond).toEqual([]);
  });

test("the big view ends at the first key, and nothing typed is lost", async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await driveAsUsual(page);
  await expectReadFromAMetre(page, 1, 80);
  await expect(entryField(page)).toBeInViewport({ ratio: 1 });
  await page.getByRole("button", { name: "Big view" }).click();
  const view = page.getByRole("dialog", { name: "Big view" });
  await expect(view.getByRole("heading", { name: "as usual" })).toBeInViewport({ ratio: 1 });
  await page.keyboard.type("1:24.2");
  await expect(view).toBeHidden();
  await expect(entryField(page)).toBeFocused();
  await expect(entryField(page)).toHaveValue("1:24.2");
});
