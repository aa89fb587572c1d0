import type { Page } from "@playwright/test";
import { crashTab } from "../support/journeyFaults.ts";
import {
  endRun,
  endSession,
  entryField,
  expect,
  lapTime,
  logLap,
  logLaps,
  open,
  runBlock,
  startSession,
  test,
} from "../support/journeys.ts";

test("two tabs show the same at once, and neither writes over the other", async ({ page, context }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  const other = await context.newPage();
  await open(other);
  await expect(lapTime(other, 2)).toHaveAccessibleName("Edit lap 2: 1:25.902");
  await logLap(other, "1:25.340");
  await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:25.340");
  await logLap(page, "1:26.001");
  await expect(lapTime(other, 4)).toHaveAccessibleName("Edit lap 4: 1:26.001");

  // Different fields of one lap: both stay.
  await lapTime(page, 2).click();
  await lapTime(other, 2).click();
  const here = page.getByRole("textbox", { name: "Lap 2", exact: true });
  const there = other.getByRole("textbox", { name: "Lap 2", exact: true });
  await expect(here).toHaveValue("1:25.902");
  await expect(there).toHaveValue("1:25.902");
  await there.fill("1:25.802");
  await here.fill("1:25.902 / late into corner 3");
  await here.press("Enter");
  await expect(page.getByText("late into corner 3")).toBeVisible();
  await there.press("Enter");
  for (const tab of [page, other]) {
    await expect(lapTime(tab, 2)).toHaveAccessibleName("Edit lap 2: 1:25.802");
    await expect(tab.getByText("late into corner 3")).toBeVisible();
  }

  // The same field: the later one stands, and its tab says what it wrote over.
  await lapTime(page, 1).click();
  await lapTime(other, 1).click();
  const first = page.getByRole("textbox", { name: "Lap 1", exact: true });
  const second = other.getByRole("textbox", { name: "Lap 1", exact: true });
  await expect(second).toHaveValue("1:25.118");
  await second.fill("1:25.300");
  await first.fill("1:25.200");
  await first.press("Enter");
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.200");
  await second.press("Enter");
  for (const tab of [page, other]) await expect(lapTime(tab, 1)).toHaveAccessibleName("Edit lap 1: 1:25.300");
  await expect(
    other.getByText("Lap 1 changed; it had been changed elsewhere meanwhile.").first(),
  ).toBeVisible();
  await other.getByRole("button", { name: "Undo" }).click();
  for (const tab of [page, other]) await expect(lapTime(tab, 1)).toHaveAccessibleName("Edit lap 1: 1:25.200");
});

test("a half-typed line in one tab is not lost to the other", async ({ page, context }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  const other = await context.newPage();
  await open(other);
  await entryField(page).pressSequentially("1:25.4");
  await logLap(other, "1:25.118");
  await expect(lapTime(page, 1)).toBeVisible();
  await expect(entryField(page)).toHaveValue("1:25.4");
  await entryField(page).press("Enter");
  await expect(lapTime(other, 2)).toHaveAccessibleName("Edit lap 2: 1:25.4");
});

test("a tab that crashed before it told the others leaves none behind once it is opened again", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  const silent = await context.newPage();
  await silent.addInitScript(() => {
    BroadcastChannel.prototype.postMessage = () => undefined;
  });
  await open(silent);
  await logLap(silent, "1:25.902");
  await expect(lapTime(silent, 2)).toBeVisible();
  await expect(lapTime(page, 2)).toBeHidden();
  await crashTab(silent);
  await silent.close();
  await open(await context.newPage());
  await expect(lapTime(page, 2)).toHaveAccessibleName("Edit lap 2: 1:25.902");
});

/** The field of the entry line of a tab that has just been opened, with its session's page drawn. */
const opened = async (page: Page, laps: number) => {
  await expect(lapTime(page, laps)).toBeVisible();
  return entryField(page);
};

test("each tab keeps its own half-typed line, over a reload of either and when one is duplicated", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  const other = await context.newPage();
  await open(other);
  await entryField(page).fill("1:25.4");
  await entryField(other).fill("1:26.0 / other");
  await page.reload();
  await expect(await opened(page, 1)).toHaveValue("1:25.4");
  await other.reload();
  await expect(await opened(other, 1)).toHaveValue("1:26.0 / other");

  // A page opened by another begins with a copy of that one's storage, as a duplicated tab does.
  const copied = context.waitForEvent("page");
  await page.evaluate(() => window.open(window.location.href));
  const copy = await copied;
  await expect(await opened(copy, 1)).toHaveValue("");
  expect(await tabId(copy)).not.toBe(await tabId(page));
  await expect(copy.getByText("Half typed")).toHaveCount(0);
  await copy.close();
  await page.reload();
  await expect(await opened(page, 1)).toHaveValue("1:25.4");
});

const tabId = async (page: Page) => {
  await expect.poll(() => page.evaluate(() => sessionStorage.getItem("lap-ledger tab"))).not.toBeNull();
  return page.evaluate(async () => {
    const { held = [] } = await navigator.locks.query();
    const id = sessionStorage.getItem("lap-ledger tab");
    return held.some(({ name }) => name === `lap-ledger tab ${id}`) ? id : undefined;
  });
};

test("a crashed tab's half-typed line is offered while another tab is open, and let go for good", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  const crashed = await context.newPage();
  await open(crashed);
  await entryField(crashed).pressSequentially("1:25.4", { delay: 50 });
  await expect(crashed.getByText("lap 2 ·")).toBeVisible();
  await crashTab(crashed);
  await crashed.close();

  // The tab that was open all the time is offered it when the driver comes to it.
  await page.evaluate(() => window.dispatchEvent(new Event("focus")));
  const offer = page.getByText(/^Half typed here in a tab that is closed, .*: 1:25\.4$/);
  await expect(offer).toBeVisible();
  await expect(entryField(page)).toHaveValue("");
  const again = await context.newPage();
  await open(again);
  await again.getByRole("button", { name: "Take it up" }).click();
  await expect(entryField(again)).toHaveValue("1:25.4");
  await expect(entryField(again)).toBeFocused();
  await entryField(again).press("Enter");
  await expect(lapTime(page, 2)).toHaveAccessibleName("Edit lap 2: 1:25.4");
  await page.evaluate(() => window.dispatchEvent(new Event("focus")));
  await expect(offer).toBeHidden();
  await again.reload();
  await expect(await opened(again, 2)).toHaveValue("");
  await expect(again.getByText("Half typed")).toHaveCount(0);
});

test("a line half typed when the other tab ends the run asks where it belongs, by keys alone", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902", "1:25.340"]);
  const other = await context.newPage();
  await open(other);
  await entryField(other).fill("5412");
  await endRun(page);
  await expect(other.getByText("It was begun in run 1, which has ended since.")).toBeVisible();
  await entryField(other).press("Enter");
  await expect(other.getByText("Say first where it belongs")).toBeVisible();
  await expect(entryField(other)).toHaveValue("5412");
  await entryField(other).press("Tab");
  await expect(other.getByRole("button", { name: "Add it to run 1" })).toBeFocused();
  await other.keyboard.press("Enter");
  await expect(runBlock(page, 1).getByText("4 laps").first()).toBeVisible();
  await expect(entryField(other)).toHaveValue("");
  await expect(entryField(other)).toBeFocused();
  await logLap(other, "1:25.700");
  await expect(runBlock(page, 2).getByRole("button", { name: "Edit lap 1: 1:25.700" })).toBeVisible();
});

test("an edit half typed when the other tab deletes its lap stays on screen and brings it back", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  const other = await context.newPage();
  await open(other);
  await lapTime(page, 2).click();
  await page.getByRole("textbox", { name: "Lap 2", exact: true }).fill("1:25.802 / late");
  await lapTime(other, 2).click();
  await expect(other.getByRole("textbox", { name: "Lap 2", exact: true })).toHaveValue("1:25.902");
  await other.getByRole("button", { name: "Delete", exact: true }).click();
  const kept = page.getByRole("textbox", { name: "What you typed for lap 2" });
  await expect(kept).toHaveValue("1:25.802 / late");
  await expect(kept).toBeFocused();
  await page.getByRole("button", { name: "Bring the lap back" }).click();
  const again = page.getByRole("textbox", { name: "Lap 2", exact: true });
  await expect(again).toHaveValue("1:25.802 / late");
  await again.press("Enter");
  for (const tab of [page, other]) await expect(lapTime(tab, 2)).toHaveAccessibleName("Edit lap 2: 1:25.802");
});

test("a line half typed when the other tab ends the session waits, and finds its run", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  const other = await context.newPage();
  await open(other, "#/log");
  await entryField(other).fill("1:25.9 / wide");
  await endSession(page);
  await expect(other.getByText(/which has ended: 1:25\.9 \/ wide$/)).toBeVisible();
  await other.getByRole("button", { name: "Go to it" }).click();
  await other.getByRole("button", { name: "Add it to run 1" }).click();
  await expect(lapTime(page, 2)).toHaveAccessibleName("Edit lap 2: 1:25.9");
  await expect(other.getByRole("region", { name: "Half typed" })).toBeHidden();
});
