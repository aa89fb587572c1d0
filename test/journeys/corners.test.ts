import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { expect, goTo, logLaps, open, startSession, test } from "../support/journeys.ts";

/** What the demo's generator made true of its corners: ms a lap, below zero less is given away. */
const { combos, corners } = JSON.parse(
  readFileSync(new URL("../../demo-data/truth.json", import.meta.url), "utf8"),
) as {
  combos: Record<"ringHatch", { comboId: string }>;
  corners: Record<"ringHatch", { from: string; changeMs: number }>;
};

/** The demo ends on Sunday 22 November 2026; this is the Wednesday after. */
const evening = new Date("2026-11-25T20:00:00+01:00");
const first = (page: Page) =>
  page.getByRole("heading", { name: /^Corner \d+ first: about 0\.\d\d s a lap$/ });
const order = (page: Page) =>
  page.getByRole("list", { name: "Corners in order of seconds" }).locator(":scope > li");

async function openDemo(page: Page): Promise<void> {
  await page.clock.setFixedTime(evening);
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await page.getByRole("heading", { name: "Start a session" }).waitFor();
}

/** The number in "Corner 5 first: …". */
const numberIn = (title: string | null) => Number(/^Corner (\d+) first/.exec(title ?? "")?.[1]);

test("the order is read, the first corner opens with its radii, and the plan of the next session names the same corner", async ({
  page,
}) => {
  const { comboId } = combos.ringHatch;
  await openDemo(page);
  await goTo(page, "Corners");
  const number = numberIn(await first(page).textContent());
  await expect(order(page).first()).toContainText(new RegExp(`^Corner ${number}(?!\\d)`));
  const seconds = (await order(page).allTextContents()).map((row) =>
    Number(/about (\d\.\d\d) s/.exec(row)?.[1] ?? Number.NaN),
  );
  expect(seconds.length).toBeGreaterThan(1);
  expect(seconds).toEqual(seconds.toSorted((a, b) => b - a));

  await order(page).first().getByRole("link").click();
  await expect(page.getByRole("heading", { name: /a lap given away by road left unused$/ })).toBeVisible();
  await expect(
    page.getByRole("img", {
      name: /^The corner from above.*: as driven arcs of \d+\.\d m.*widest line an arc of \d+\.\d m/,
    }),
  ).toBeVisible();
  await page.goto(`./#/corners/${comboId}`);
  await expect(page.getByRole("heading", { level: 1 })).toContainText("club hatch");
  const ofHatch = numberIn(await first(page).textContent());
  await page.goto(`./#/targets/${comboId}?part=plan`);
  await expect(
    page.getByRole("heading", { name: `Faster through corner ${ofHatch}`, exact: true }),
  ).toBeVisible();
});

test("what became of the corners since the review before is told with its range, which holds what the demo made true; the week's Next names the first", async ({
  page,
}) => {
  const { comboId } = combos.ringHatch;
  const { from, changeMs } = corners.ringHatch;
  expect(from).toBe("2026-10-20");
  await openDemo(page);
  await page.goto(`./#/corners/${comboId}`);
  const change = page.getByRole("region", { name: "Since the review before" });
  await expect(change).toContainText(/0\.\d\d s a lap less given away at corners 5, 8 and 11 since 20 Oct/);
  const range = /[Bb]etween (\d\.\d\d) and (\d\.\d\d) s less/.exec((await change.textContent()) ?? "");
  expect(-changeMs / 1000).toBeGreaterThanOrEqual(Number(range?.[1]));
  expect(-changeMs / 1000).toBeLessThanOrEqual(Number(range?.[2]));
  const title = await first(page).textContent();

  await page.goto("./#/review/statement?week=2026-W47");
  const next = page.getByRole("region", { name: "Next" });
  await next.getByRole("link", { name: title ?? "", exact: true }).click();
  await expect(page).toHaveURL(new RegExp(`corner=${numberIn(title)}\\b`));
});

test("without a review the answer comes from remarks, and without those the page asks for a look at a replay", async ({
  page,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await goTo(page, "Corners");
  await expect(page.getByRole("heading", { name: "Which corner first cannot be told yet" })).toBeVisible();
  await expect(page.getByText(/^Look at three corners in a replay: it takes a minute\./)).toBeVisible();
  await expect(page.getByRole("link", { name: "Look at corners in a replay" })).toBeVisible();

  await goTo(page, "Log");
  await logLaps(page, ["1:24.0", "1:24.1", "1:24.2", "1:24.3", "1:24.4", "1:30.2 f@5"]);
  await goTo(page, "Corners");
  // Six seconds over the usual lap, in one lap of six.
  await expect(page.getByRole("heading", { name: "Corner 5 first: about 1.00 s a lap" })).toBeVisible();
  await expect(
    page.getByText(/That is what mistakes there have cost\. Its line has not been looked at/),
  ).toBeVisible();
  await expect(page.getByText("1 of 6 laps had an off, a spin or a contact there.")).toBeVisible();
  await page.getByRole("link", { name: "Look at corners in a replay" }).click();
  await expect(page.getByRole("heading", { name: "Which corners?" })).toBeVisible();
});
