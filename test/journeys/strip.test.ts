import type { Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import {
  endRun,
  endSession,
  entryField,
  expect,
  logLap,
  logLaps,
  open,
  runBlock,
  startSession,
  test,
} from "../support/journeys.ts";

const strip = (page: Page, run: number) => runBlock(page, run).getByRole("figure", { name: /^Run \d/ });
const first = ["1:25.118", "1:24.930", "1:24.661", "1:24.702", "1:24.588", "1:24.810"];
const second = ["1:23.402", "1:23.127", "1:23.060", "1:23.355", "1:23.208", "1:23.250"];

test("laps typed grow the strip, with the marks of their remarks in its words", async ({ page }) => {
  await open(page);
  await startSession(page, "Club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  await expect(strip(page, 1)).toHaveAccessibleName("Run 1: 1 lap, best 1:25.118");
  await logLaps(page, ["1:24.930", "1:31.500 s@3", "1:24.700 c"]);
  await expect(strip(page, 1)).toHaveAccessibleName("Run 1: 4 laps, best 1:24.930, 1 with a mistake, 1 cut");
  await expectAccessible(page, "the strip");
});

test("a tap on a dot opens that lap, and so do the arrows and Enter", async ({ page }) => {
  await open(page);
  await startSession(page, "Club hatch", "Varnholt Ring");
  await logLaps(page, first);
  const box = await strip(page, 1).boundingBox();
  if (box === null) throw new Error("the strip is drawn");
  // The first dots stand at the left; ten laps fill the strip.
  await page.mouse.click(box.x + 20, box.y + box.height / 2);
  await expect(runBlock(page, 1).getByLabel(/^Lap 1/)).toHaveValue("1:25.118");
  await page.keyboard.press("Escape");
  await strip(page, 1).focus();
  await page.keyboard.press("End");
  await expect(runBlock(page, 1).getByRole("status").filter({ hasText: "Lap 6: 1:24.810" })).toBeAttached();
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("Enter");
  await expect(runBlock(page, 1).getByLabel(/^Lap 5/)).toHaveValue("1:24.588");
});

test("two runs are chosen one after the other, and stand side by side at an address of their own", async ({
  page,
}) => {
  await open(page);
  await startSession(page, "Club hatch", "Varnholt Ring");
  await logLaps(page, first);
  await endRun(page);
  await logLaps(page, second);
  await page.getByRole("button", { name: /^Compare run 1 / }).click();
  await expect(page.getByText(/^Compare run 1 of .* with … Choose another run/)).toBeVisible();
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect(page.getByText(/Choose another run/)).toBeHidden();
  await page.getByRole("button", { name: /^Compare run 1 / }).click();
  await page.getByRole("button", { name: /^Compare run 1 .* with run 2/ }).click();
  await expect(page).toHaveURL(/#\/review\/compare\?runs=/);
  const title = page.getByText(/^The later laps were faster by 1\.\d\d s, very likely at least/);
  await expect(title).toBeVisible();
  await expect(page.getByRole("figure", { name: /^Run [12] of/ })).toHaveCount(2);
  await page.reload();
  await expect(title).toBeVisible();
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await expectAccessible(page, "the strip");
  await page.goBack();
  await expect(entryField(page)).toBeVisible();
});

test("two sessions of a list carry their strips and are compared from there", async ({ page }) => {
  await open(page);
  await startSession(page, "Club hatch", "Varnholt Ring");
  await logLaps(page, first);
  await endSession(page);
  await page.goto("./#/log");
  await startSession(page, "Club hatch", "Varnholt Ring");
  await logLaps(page, second);
  await page.goto("./#/review");
  const list = page.getByRole("table", { name: "Sessions, newest first" });
  await expect(list.getByRole("img", { name: /6 laps, best 1:2\d\.\d{3}$/ })).toHaveCount(2);
  await page.getByRole("button", { name: "Compare two sessions" }).click();
  await list
    .getByRole("button", { name: /^Compare / })
    .first()
    .click();
  await list.getByRole("button", { name: /^Compare .* with / }).click();
  await expect(page).toHaveURL(/#\/review\/compare\?sessions=/);
  await expect(page.getByText(/^Each session needs 3 runs of 5 pace laps, and one has 1\./)).toBeVisible();
  await expect(page.getByRole("rowheader", { name: "best" })).toBeVisible();
});
