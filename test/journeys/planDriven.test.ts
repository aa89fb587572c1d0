import type { Locator, Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { Hand } from "../support/journeyHand.ts";
import {
  endSession,
  entryField,
  expect,
  logLaps,
  open,
  reading,
  startSession,
  test,
} from "../support/journeys.ts";
import { timeOf } from "../support/journeyTimes.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const panel = (page: Page) => page.getByRole("region", { name: "Plan", exact: true });
/** Laps about a usual one. */
const offs = [-90, 60, 0, 110, -40];

const outcome = (page: Page) => page.getByRole("list", { name: "Plan and outcome" }).getByRole("listitem");

/** The lower edge of a part lies above the upper edge of another. */
async function expectAbove(part: Locator, below: Locator): Promise<void> {
  const [upper, lower] = [await part.boundingBox(), await below.boundingBox()];
  expect((upper?.y ?? 0) + (upper?.height ?? 0)).toBeLessThanOrEqual((lower?.y ?? 0) + 1);
}

/** Between two runs the verdict, what to do next, the plan's line and the entry line are all in sight. */
async function expectAllInSight(page: Page): Promise<void> {
  const verdict = page.getByRole("region", { name: /^Verdict of run/ });
  for (const [width, height] of [
    [390, 844],
    [390, 664],
    [320, 640],
    [844, 390],
  ] as const) {
    await page.setViewportSize({ width, height });
    await page.evaluate(() => window.scrollTo(0, 0));
    for (const part of [
      verdict.getByRole("heading"),
      verdict.getByText(/^Next:/),
      panel(page),
      entryField(page),
    ])
      await expect(part.first()).toBeInViewport({ ratio: 1 });
    if (width < 720) await expectAbove(verdict.getByText(/^Next:/), panel(page));
  }
  await page.setViewportSize({ width: 390, height: 844 });
}

/** Drives what the line over the entry line asks for, with a reload after the first lap. */
async function driveLine(page: Page, usual: number, tallest: number): Promise<void> {
  const [, laps = "0"] = /· (\d+) laps?/.exec((await panel(page).textContent()) ?? "") ?? [];
  const times = Array.from({ length: Number(laps) }, (_, lap) =>
    timeOf(usual + (offs[lap % offs.length] ?? 0)),
  );
  await logLaps(page, times.slice(0, 1));
  await expect(panel(page)).toContainText(`1 of ${laps} laps`);
  expect((await panel(page).boundingBox())?.height).toBeLessThanOrEqual(tallest);
  await page.reload();
  await expect(panel(page)).toContainText(`1 of ${laps} laps`);
  await logLaps(page, times.slice(1));
  await expect(panel(page)).toContainText(`${laps} of ${laps} laps`);
}

test("a drafted plan is started, driven through with one run left out, and its outcome read; nothing is lost over a reload", async ({
  page,
}) => {
  test.setTimeout(240_000);
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).tap();
  const runs = page.getByRole("list", { name: "Runs of tonight" }).getByRole("listitem");
  await expect(page.getByRole("link", { name: "The whole plan" })).toBeVisible();
  const planned = await runs.count();
  expect(planned).toBeGreaterThan(1);
  await expect(runs.getByRole("heading")).toHaveCount(1);
  await expectAccessible(page, "the start page");
  const [, minutes = "1", seconds = "20"] =
    /usual lap(\d):(\d\d\.\d+)/.exec(
      (await page.getByRole("region", { name: "Last time" }).textContent()) ?? "",
    ) ?? [];
  const usual = Math.round((Number(minutes) * 60 + Number(seconds)) * 1000);

  await page.getByRole("button", { name: "Start with this plan" }).tap();
  await expect(panel(page)).toContainText(`Plan 1 of ${planned}`);
  await page.reload();
  await expect(panel(page)).toContainText(`Plan 1 of ${planned}`);
  // With the pad open it is one line; folded between two runs, the pad leaves room for all of it.
  await driveLine(page, usual, 56);
  await panel(page).getByRole("button", { name: "End run" }).tap();
  await expect(panel(page)).toContainText(`Plan 2 of ${planned}`);
  await expectAllInSight(page);
  await expectAccessible(page, "the plan between two runs");
  for (let line = 2; line < planned; line++) {
    await driveLine(page, usual, 160);
    await panel(page).getByRole("button", { name: "End run" }).tap();
    await expect(page.getByRole("region", { name: `Verdict of run ${line}` })).toBeVisible();
  }
  await panel(page).getByRole("button", { name: "Leave out" }).tap();
  await expect(panel(page)).toContainText("every line of it is driven or left out");
  await page.reload();
  await expect(panel(page)).toContainText("every line of it is driven or left out");

  await endSession(page);
  await expect(outcome(page)).toHaveCount(planned);
  await expect(outcome(page).first()).toContainText(/Good.*in run 1/);
  await expect(outcome(page).last()).toContainText("Left out");
  await expectAccessible(page, "plan and outcome");
  await page.reload();
  await expect(outcome(page).last()).toContainText("Left out");
  await page.getByRole("button", { name: "Back to Log" }).tap();
  await expect(runs.first()).toBeVisible();
});

test("a drill is counted by touch and as a whole, over a reload at each step, and its share is read in the outcome", async ({
  page,
}) => {
  test.setTimeout(180_000);
  const hand = new Hand(page);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118"]);
  await endSession(page);
  await page.getByRole("button", { name: "Back to Log" }).tap();
  await page.getByRole("link", { name: "The whole plan" }).tap();
  await hand.button("Add a drill");
  await hand.write(page.getByRole("textbox", { name: /^Corner/ }), "5");
  await hand.button("Add it");
  await page.getByRole("link", { name: "Log", exact: true }).tap();
  await expect(page.getByRole("region", { name: "Tonight, by your plan" })).toContainText("corner 5");
  await hand.button("Start with your plan");

  // The drill first, whatever the plan had before it.
  await panel(page).getByRole("button", { name: "Another line of the plan" }).tap();
  await page
    .getByRole("dialog")
    .getByRole("button", { name: /corner 5/ })
    .tap();
  await expect(panel(page)).toContainText(/corner 5/);
  for (const key of ["At the mark", "Missed"])
    expect(
      (await panel(page).getByRole("button", { name: key, exact: true }).boundingBox())?.height,
    ).toBeGreaterThanOrEqual(44);
  const counted = panel(page).getByLabel("Counted");
  for (let tries = 1; tries <= 4; tries++) {
    await hand.button(tries === 3 ? "Missed" : "At the mark", panel(page));
    await expect(counted).toHaveText(`${tries >= 3 ? tries - 1 : tries} of ${tries}`);
  }
  await page.reload();
  await expect(counted).toHaveText("3 of 4");
  await hand.button("At the mark", panel(page));
  await expect(counted).toHaveText("4 of 5");
  await page.getByRole("button", { name: "Undo" }).tap();
  await expect(counted).toHaveText("3 of 4");

  // As a whole, wrong first: what is typed stays, over a reload too.
  await panel(page).getByRole("button", { name: "Another line of the plan" }).tap();
  const typed = page.getByRole("dialog").getByRole("textbox", { name: "Or as a whole" });
  await hand.write(typed, "12 of 10");
  await page.getByRole("dialog").getByRole("button", { name: "Count", exact: true }).tap();
  await expect(page.getByText(/more worked than were tried/)).toBeVisible();
  await page.reload();
  await panel(page).getByRole("button", { name: "Another line of the plan" }).tap();
  await expect(typed).toHaveValue("12 of 10");
  await hand.write(typed, "7/10");
  await page.getByRole("dialog").getByRole("button", { name: "Count", exact: true }).tap();
  await expect(typed).toHaveValue("");
  await page.getByRole("dialog").getByRole("button", { name: "Done" }).tap();
  await expect(counted).toHaveText("7 of 10");

  // Slow laps of the drill, then its end.
  await logLaps(page, ["1:40.000", "1:41.000"]);
  await expect(reading(page)).not.toContainText(/PB/);
  await page.getByRole("button", { name: "End run" }).last().tap();
  await endSession(page);
  await expect(outcome(page).filter({ hasText: "corner 5" })).toContainText(
    "7 of 10 stops at the mark in run 1",
  );
  await expect(page.getByText(/^of 2 laps: 2 drill/)).toBeAttached();
  await page.reload();
  await expect(outcome(page).filter({ hasText: "corner 5" })).toContainText(
    "7 of 10 stops at the mark in run 1",
  );
});
