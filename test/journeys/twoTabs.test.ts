import { crashTab } from "../support/journeyFaults.ts";
import {
  entryField,
  expect,
  lapTime,
  logLap,
  logLaps,
  open,
  startSession,
  test,
} from "../support/journeys.ts";

test("two tabs show the same at once, and neither writes over the other", async ({ page, context }) => {
  await open(page);
  await startSession(page, "club hatch", "Marlow Fen");
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
  await startSession(page, "club hatch", "Marlow Fen");
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
  await startSession(page, "club hatch", "Marlow Fen");
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
