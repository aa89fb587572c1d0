import type { Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { expect, open, test } from "../support/journeys.ts";
import { readPdf } from "../support/pdfText.ts";

/** The demo's last whole week, and the sums its generator made true are checked in the unit tests. */
const week47 = "#/review/statement?week=2026-W47";

/** Opens the demo logbook and goes to an address of Review. */
async function inDemo(page: Page, hash: string): Promise<void> {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  await visit(page, hash);
}

async function visit(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    window.location.hash = to;
  }, hash);
}

const rows = (page: Page) => page.getByRole("list", { name: /^All combos, sorted by/ });

/** The views beside the review of one combo, in their states. */
async function throughAll(page: Page, look: (where: string) => Promise<void>): Promise<void> {
  await open(page);
  for (const [part, words] of [
    ["across", /^Nothing to compare yet/],
    ["search", /^Fill in one field/],
    ["statement", /^Nothing was driven yet/],
  ] as const) {
    await visit(page, `#/review/${part}`);
    await expect(page.getByText(words)).toBeVisible();
    await look(`${part}, empty`);
  }
  await visit(page, "#/log");
  await inDemo(page, "#/review/across");
  await expect(page.getByRole("figure")).toBeVisible();
  await look("all combos over the weeks");
  await page.getByRole("radio", { name: "from circuit to circuit" }).check({ force: true });
  await page.getByRole("button", { name: "Enter a reference lap" }).click();
  await page.getByRole("button", { name: "Store it" }).click();
  await expect(page.getByLabel("Lap time")).toHaveAttribute("aria-invalid", "true");
  await look("all combos from circuit to circuit, a reference lap refused");
  await visit(page, "#/review/search?remark=off");
  await expect(page.getByRole("table", { name: /^Laps found/ })).toBeVisible();
  await look("search with results");
  await visit(page, "#/review/statement?week=2026-W42");
  await expect(page.getByRole("heading", { level: 1, name: "Week 42 of 2026" })).toBeVisible();
  await visit(page, week47);
  await expect(page.getByRole("list", { name: "What was driven" })).toBeVisible();
  await look("week");
}

for (const colorScheme of ["light", "dark"] as const)
  for (const width of [390, 1280])
    test.describe(`${colorScheme}, ${width} px wide`, () => {
      test.use({ colorScheme, viewport: { width, height: 844 }, hasTouch: width < 600 });
      test("all combos, search and week break no rule of WCAG 2.2 AA", async ({ page }) => {
        test.setTimeout(120_000);
        await throughAll(page, (where) => expectAccessible(page, where));
      });
    });

/** Words of the page, names of combos aside, that stand on two lines without a hyphen between them. */
function brokenWords(page: Page): Promise<string[]> {
  return page.locator("main").evaluate((main) => {
    const texts = document.createTreeWalker(main, NodeFilter.SHOW_TEXT);
    const broken: string[] = [];
    for (let text = texts.nextNode(); text !== null; text = texts.nextNode())
      for (const { 0: word, index } of (text.textContent ?? "").matchAll(/\p{L}+/gu)) {
        if (text.parentElement?.closest("bdi")) continue;
        const range = document.createRange();
        range.setStart(text, index);
        range.setEnd(text, index + word.length);
        const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
        if (lines.size > 1) broken.push(word);
      }
    return broken;
  });
}

for (const [name, width, height, textPercent] of [
  ["320 px wide", 320, 640, 100],
  ["text at 200 %", 390, 844, 200],
  ["text at 200 % on a desk", 1280, 800, 200],
] as const)
  test.describe(name, () => {
    test.use({ viewport: { width, height } });
    test("all combos, search and week never scroll sideways and break no word within it", async ({
      page,
    }) => {
      test.setTimeout(120_000);
      await page.addInitScript((percent) => {
        document.addEventListener("DOMContentLoaded", () => {
          document.documentElement.style.fontSize = `${percent}%`;
        });
      }, textPercent);
      await throughAll(page, async (where) => {
        const over = await page.evaluate(() => {
          const { scrollWidth, clientWidth } = document.documentElement;
          return scrollWidth - clientWidth;
        });
        expect(over, where).toBeLessThanOrEqual(0);
        expect(await brokenWords(page), where).toEqual([]);
      });
    });
  });

for (const width of [320, 390])
  test(`all combos and the week have nothing that scrolls sideways at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 });
    await inDemo(page, "#/review/across");
    const wide = () =>
      page.locator("main *").evaluateAll((all) =>
        all
          .filter((one) => one.scrollWidth > one.clientWidth + 1)
          .filter((one) => ["auto", "scroll"].includes(getComputedStyle(one).overflowX))
          .map((one) => one.className),
      );
    await expect(rows(page)).toBeVisible();
    expect(await wide()).toEqual([]);
    await page.getByRole("radio", { name: "from circuit to circuit" }).check({ force: true });
    expect(await wide()).toEqual([]);
    await visit(page, week47);
    await expect(page.getByRole("list", { name: "What was driven" })).toBeVisible();
    expect(await wide()).toEqual([]);
  });

test("by keyboard: the rows are sorted, a combo opened, and back leads to all combos", async ({ page }) => {
  await inDemo(page, "#/review/across");
  await page.getByRole("radio", { name: "from circuit to circuit" }).focus();
  await page.keyboard.press("Space");
  await page.getByRole("combobox", { name: "Sorted by" }).selectOption("mistakes, worst first");
  const first = rows(page).getByRole("link").first();
  await expect(first).toHaveText("Varnholt Ring · endurance trainer");
  await first.focus();
  await page.keyboard.press("Enter");
  await expect(
    page.getByRole("heading", { level: 1, name: "Varnholt Ring · endurance trainer" }),
  ).toBeVisible();
  await page.goBack();
  await expect(rows(page)).toBeVisible();
});

test("by keyboard: a lap is searched for and stands focused on its session's page", async ({ page }) => {
  await inDemo(page, "#/review/search");
  await page.getByLabel("Words").focus();
  await page.keyboard.type("endurance trainer");
  await page.getByLabel("Remark").selectOption("off");
  await page.getByLabel("Words").press("Enter");
  await expect(page.getByText("2 sessions and 3 laps found.")).toBeVisible();
  const lap = page
    .getByRole("table", { name: /^Laps found/ })
    .getByRole("link")
    .first();
  await expect(lap).toHaveText("Sun 22 Nov 2026, run 2, lap 3");
  await lap.focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("button", { name: "Edit lap 3: 1:23.379" })).toBeFocused();
  await expect(page.getByRole("button", { name: "Edit lap 3: 1:23.379" })).toBeInViewport();
  await page.goBack();
  await expect(page.getByText("2 sessions and 3 laps found.")).toBeVisible();
});

/** Repeats the rows of the week's lists to the most they ever have, under long names. */
async function fillLists(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const list of document.querySelectorAll("article ol:not([aria-label='Laps by day'])")) {
      const [row] = list.children;
      while (row !== undefined && list.children.length < 7) list.prepend(row.cloneNode(true));
      for (const name of list.querySelectorAll("bdi"))
        name.textContent = "Varnholt Ring, the long layout · junior single-seater";
    }
  });
}

/** Values that on paper stand under no head, or under another's: neither edge in line with that of their own head. */
async function offTheirHeads(page: Page, points: number): Promise<string[]> {
  const margins = 2 * 16;
  const width = Math.round((points / 72) * 96 - (margins / 25.4) * 96);
  await page.emulateMedia({ media: "print" });
  await page.setViewportSize({ width, height: 1000 });
  const off = await page.locator("[data-set]").evaluateAll((tables) => {
    const places = (parts: Iterable<Element>) => [...parts].map((part) => part.getBoundingClientRect());
    return tables.flatMap((table) => {
      const heads = places(table.querySelectorAll("[aria-hidden] > *")).slice(1);
      return [...table.querySelectorAll("li")].flatMap((row) =>
        places(row.querySelectorAll("dd"))
          .filter(({ left, right, top, bottom }, column) => {
            const head = heads[column];
            const isUnder =
              head !== undefined && (Math.abs(head.left - left) < 1 || Math.abs(head.right - right) < 1);
            const name = row.firstElementChild?.getBoundingClientRect();
            return !isUnder || name === undefined || top > name.bottom || bottom < name.top;
          })
          .map(() => row.textContent ?? ""),
      );
    });
  });
  await page.emulateMedia({ media: null });
  return off;
}

for (const [format, width, height] of [
  ["A4", 595, 842],
  ["Letter", 612, 792],
] as const)
  test(`the week prints on one page of ${format}, with its figures and without buttons`, async ({ page }) => {
    await inDemo(page, week47);
    const driven = page.getByRole("list", { name: "What was driven" });
    await expect(driven.getByRole("listitem").last()).toContainText("80 in 5 sessions");
    const printed = readPdf(await page.pdf({ format }));
    expect(printed.pages).toBe(1);
    expect(await offTheirHeads(page, width)).toEqual([]);
    await fillLists(page);
    expect(readPdf(await page.pdf({ format })).pages, "the fullest week there can be").toBe(1);
    expect(Math.abs(printed.size[0] - width) + Math.abs(printed.size[1] - height)).toBeLessThanOrEqual(2);
    for (const words of [
      "Week 47 of 2026",
      "Mon 16 Nov 2026 to Sun 22 Nov 2026",
      "5 sessions, 80 laps",
      "Usual lap faster by",
      "21 Tue",
      "the week",
      "80 in 5 sessions 71 of 80, 89 % 1 h 40 min",
      "PB this week",
      "1:23.744",
      "mean lap in all",
      "best lap 1:23.300",
      "Look at one lap of the replay",
      "The reason: measured on you.",
    ])
      expect(printed.text).toContain(words.replace(/\s/g, ""));
    for (const words of ["Print", "The week before", "all combos", "Targets Rig"])
      expect(printed.text).not.toContain(words.replace(/\s/g, ""));
  });
