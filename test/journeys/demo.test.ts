import { readFile, writeFile } from "node:fs/promises";
import { chooseFile, saveBackup } from "../support/journeyDevices.ts";
import {
  endRun,
  entryField,
  expect,
  goTo,
  lapTime,
  logLaps,
  open,
  startSession,
  test,
} from "../support/journeys.ts";

test("the demo comes in by one button and goes out by one, and the own logbook is as it was", async ({
  page,
}) => {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  await expect(page.getByRole("table", { name: "Last sessions" }).getByRole("link")).toHaveCount(8);
  await goTo(page, "Data");
  await page.getByRole("button", { name: "Remove the demo logbook" }).click();
  await expect(page.getByText(/is removed/).first()).toBeVisible();
  await expect(page.getByText("1 in this browser")).toBeVisible();
  await goTo(page, "Log");
  await expect(page.getByRole("heading", { name: "A logbook for your practice laps" })).toBeVisible();
  await expect.poll(() => page.evaluate(async () => (await indexedDB.databases()).length)).toBe(2); // the list of logbooks and the one logbook
});

test("loaded from Data by the keyboard it opens Log, with the focus on its heading", async ({ page }) => {
  await open(page);
  await goTo(page, "Data");
  await page.getByRole("button", { name: "Load the demo logbook" }).press("Enter");
  await expect(page.getByRole("heading", { level: 1, name: "Start a session" })).toBeFocused();
  await expect(page.getByText("This is the demo")).toBeVisible();
});

test("what is typed and half typed in the demo is named before it goes, and is in the own logbook after", async ({
  page,
}) => {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByText("This is the demo")).toBeVisible();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.930"]);
  await entryField(page).pressSequentially("4912 f@3");
  await goTo(page, "Data");
  await page.getByRole("button", { name: "Remove the demo logbook" }).click();
  const dialog = page.getByRole("alertdialog", { name: "Remove the demo logbook" });
  await expect(dialog.getByText("You typed 2 laps in the demo")).toBeVisible();
  await expect(dialog.getByRole("listitem").first()).toContainText(": 2 laps");
  await expect(dialog.getByRole("listitem").last()).toHaveText("4912 f@3");
  await dialog.getByRole("button", { name: "Move what I typed, then remove the demo" }).click();
  await expect(page.getByText("1 in this browser")).toBeVisible();
  await expect(page.getByText("This is the demo")).toBeHidden();
  await goTo(page, "Log");
  await expect(lapTime(page, 2)).toHaveAccessibleName("Edit lap 2: 1:24.930");
  await expect(lapTime(page, 3)).toBeHidden();
  await expect(entryField(page)).toHaveValue("4912 f@3");
});

test("what is backed up, erased and restored is the same byte for byte", async ({ page }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.930 / tight line", "s@3", "1:24.661 f@5"]);
  await endRun(page);
  await logLaps(page, ["1:24.4"]);
  await goTo(page, "Data");
  const before = await readFile(await saveBackup(page), "utf8");
  const file = test.info().outputPath("before.json");
  await writeFile(file, before);

  await page.getByRole("button", { name: "Erase everything" }).click();
  const dialog = page.getByRole("alertdialog", { name: "Erase everything" });
  await dialog.getByRole("textbox").fill("erase everything");
  await dialog.getByRole("button", { name: "Erase for good" }).click();
  await page.getByRole("button", { name: "Begin afresh" }).click();
  await expect(page.getByRole("heading", { name: "A logbook for your practice laps" })).toBeVisible();

  await page.getByRole("link", { name: "Restore a backup" }).click();
  await chooseFile(page, "Choose a backup file", file);
  await page.getByRole("button", { name: "Restore as a new logbook" }).click();
  await expect(page.getByText(/is open/).first()).toBeVisible();
  await goTo(page, "Data");
  const after = await readFile(await saveBackup(page), "utf8");
  expect(after.slice(after.indexOf('"tables"'))).toBe(before.slice(before.indexOf('"tables"')));
});
