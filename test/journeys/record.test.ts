import type { Page } from "@playwright/test";
import { endSession, expect, goTo, logLaps, open, startSession, test } from "../support/journeys.ts";

const day = 86_400_000;
const firstEvening = Date.UTC(2027, 3, 10, 18);
const record = (page: Page) => page.getByRole("heading", { level: 1, name: "What became of the chances" });

/** One evening of six laps about a usual one. */
async function anEvening(page: Page, at: number, usual: number): Promise<void> {
  await page.clock.setFixedTime(at);
  await goTo(page, "Log");
  await page.reload();
  await startSession(page, "club hatch", "Varnholt Ring");
  const laps = [0.2, 0.3, 0, 0.4, 0.1, 0.2].map((more) => `1:${(usual + more).toFixed(3)}`);
  await logLaps(page, laps);
  await endSession(page);
}

test("the demo's forecast of week 8 for week 12 stands in its record, and the way back leads to Targets", async ({
  page,
}) => {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  await page.goto("./#/targets");
  await page.getByRole("link", { name: "What became of the chances" }).click();
  await expect(record(page)).toBeVisible();
  const target = page.getByRole("button", { name: /^Mean of 5 laps 1:24\.000 by Fri 20 Nov 2026/ });
  await expect(target).toContainText("Reached");
  const said = page.getByRole("listitem").filter({ hasText: "Thu 22 Oct 2026" }).first();
  await expect(said).toContainText("16 chances in 20");
  await expect(said).toContainText("came true");
  await expect(page.getByRole("img", { name: /Said about \d+ in 20: \d+ of \d+ came true/ })).toBeVisible();
  await page.reload();
  await expect(record(page)).toBeVisible();
  await page.getByRole("link", { name: "Back to Targets" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Targets" })).toBeVisible();
});

test("a chance is kept once a session, in two tabs too, and scored when its date has passed", async ({
  page,
  context,
}) => {
  test.slow();
  await page.clock.setFixedTime(firstEvening);
  await open(page);
  for (const [evening, usual] of [25, 24.8, 24.6].entries())
    await anEvening(page, firstEvening + 2 * evening * day, usual);
  await page.goto("./#/targets");
  await page.getByRole("button", { name: "Set a target" }).click();
  const form = page.getByRole("form", { name: "New target" });
  await form.getByLabel("Time to reach").fill("1:24.300");
  await form.getByLabel("By", { exact: true }).fill("2027-04-30");
  await form.getByRole("button", { name: /^Set target/ }).click();
  await expect(page.getByRole("heading", { level: 3, name: "best lap 1:24.300" })).toBeVisible();
  await page.goto("./#/targets?part=record");
  // It was set today, so nothing is kept of it yet.
  await expect(page.getByText(/^No chance has been kept yet\./)).toBeVisible();

  const other = await context.newPage();
  for (const tab of [page, other]) {
    await tab.clock.setFixedTime(firstEvening + 5 * day);
    await tab.goto("./#/targets");
    await tab.reload();
    await expect(tab.getByRole("link", { name: "What became of the chances" })).toBeVisible();
  }
  await other.close();
  await page.getByRole("link", { name: "What became of the chances" }).click();
  const target = page.getByRole("button", { name: /^Best lap 1:24\.300 by Fri 30 Apr 2027/ });
  await expect(target).toContainText("Not due yet");
  await expect(target).toContainText("1 forecast");

  await anEvening(page, firstEvening + 6 * day, 24.1);
  await page.clock.setFixedTime(firstEvening + 21 * day);
  await page.goto("./#/targets?part=record");
  await page.reload();
  await expect(target).toContainText("Reached");
  await expect(target).toContainText("1 forecast");
  await expect(
    page.getByText("Too few to judge the chances yet: 1 target came due, it takes 5."),
  ).toBeVisible();
});

test("a race distance keeps what was typed over a reload", async ({ page }) => {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  await page.goto("./#/targets");
  await page.getByRole("link", { name: "Race distance" }).first().click();
  await expect(page.getByText(/^20 laps take about 28:/)).toBeVisible();
  await page.getByRole("textbox", { name: "Laps" }).fill("30");
  await page.getByRole("textbox", { name: "Fuel a lap" }).fill("2.4");
  await page.getByRole("textbox", { name: "Reserve" }).fill("4");
  await expect(page.getByText("Take 76.0 l: 30 laps of 2.40 l, and 4.0 l in reserve.")).toBeVisible();
  await page.reload();
  await expect(page.getByText(/^30 laps take about 42:/)).toBeVisible();
  await expect(page.getByText("Take 76.0 l: 30 laps of 2.40 l, and 4.0 l in reserve.")).toBeVisible();
});
