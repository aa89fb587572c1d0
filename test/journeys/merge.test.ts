import { expectAccessible } from "../support/journeyAxe.ts";
import { anotherDevice, chooseFile, mergeLine, rowsOf, saveBackup } from "../support/journeyDevices.ts";
import { expect, goTo, lapTime, logLaps, open, startSession, test } from "../support/journeys.ts";

test("two devices exchange backups and hold the same; one undo takes a merge back", async ({
  page,
  browser,
  baseURL,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.930", "1:24.661"]);
  await goTo(page, "Data");
  const first = await saveBackup(page);

  // The PC takes the phone's logbook, and both drive on.
  const pc = await anotherDevice(browser, baseURL);
  await goTo(pc, "Data");
  await chooseFile(pc, "Choose a received file", first);
  await expect(mergeLine(pc, "laps")).toHaveText(/3/);
  await pc.getByRole("button", { name: "Merge into the open logbook" }).click();
  await expect(pc.getByText(/rows added or changed/).first()).toBeVisible();
  await goTo(pc, "Log");
  await lapTime(pc, 1).click();
  const onPc = pc.getByRole("textbox", { name: "Lap 1", exact: true });
  await onPc.fill("1:25.200");
  await onPc.press("Enter");
  await expect(lapTime(pc, 1)).toHaveAccessibleName("Edit lap 1: 1:25.200");
  await goTo(page, "Log");
  await lapTime(page, 1).click();
  const onPhone = page.getByRole("textbox", { name: "Lap 1", exact: true });
  await onPhone.fill("1:25.300");
  await onPhone.press("Enter");
  await logLaps(page, ["1:24.702"]);

  // The phone's lap of the PC's lap 1 was typed later: it stays, and the preview says so row by row.
  await goTo(page, "Data");
  const second = await saveBackup(page);
  await goTo(pc, "Data");
  await chooseFile(pc, "Choose a received file", second);
  const both = pc.getByRole("table", { name: "Rows changed on both sides" });
  await expect(both).toBeVisible();
  await expectAccessible(pc, "the preview of a merge");
  await expect(both.getByRole("row", { name: /lap 1 of run 1/ })).toHaveText(
    /1:25\.200.*1:25\.300.*the file’s/,
  );
  await expect(mergeLine(pc, "laps")).toHaveText(/^laps112$/);
  await pc.getByRole("button", { name: "Merge into the open logbook" }).click();
  await expect(pc.getByText(/rows? added or changed/i).first()).toBeVisible();
  await goTo(pc, "Log");
  await expect(lapTime(pc, 1)).toHaveAccessibleName("Edit lap 1: 1:25.300");
  await expect(lapTime(pc, 4)).toHaveAccessibleName("Edit lap 4: 1:24.702");
  // What was done on Data is no news on Log; it is taken back from there all the same.
  await pc.keyboard.press("Control+z");
  await expect(lapTime(pc, 1)).toHaveAccessibleName("Edit lap 1: 1:25.200");
  await expect(lapTime(pc, 4)).toHaveCount(0);

  // Merged again, and the other way: the same rows on both, and nothing left to merge.
  await goTo(pc, "Data");
  await chooseFile(pc, "Choose a received file", second);
  await pc.getByRole("button", { name: "Merge into the open logbook" }).click();
  await expect(pc.getByText(/rows? added or changed/i).first()).toBeVisible();
  await chooseFile(page, "Choose a received file", await saveBackup(pc));
  await expect(page.getByText("Nothing would change")).toBeVisible();
  expect(await rowsOf(page)).toEqual(await rowsOf(pc));
});

test("what two devices made each for themselves is joined after they have met", async ({
  page,
  browser,
  baseURL,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.930"]);
  const pc = await anotherDevice(browser, baseURL);
  await startSession(pc, "Club Hatch", "varnholt ring");
  await logLaps(pc, ["1:26.000"]);
  await goTo(page, "Data");
  const file = await saveBackup(page);
  await goTo(pc, "Data");
  await expect(pc.getByRole("region", { name: "The same twice" })).toHaveCount(0);
  await chooseFile(pc, "Choose a received file", file);
  await pc.getByRole("button", { name: "Merge into the open logbook" }).click();
  const twice = pc.getByRole("region", { name: "The same twice" });
  await expect(twice.getByRole("listitem")).toHaveCount(2);
  await twice.getByRole("button", { name: "Make it one" }).first().click();
  await expect(twice.getByRole("listitem")).toHaveCount(1);
  await twice.getByRole("button", { name: "Make it one" }).click();
  await expect(twice).toHaveCount(0);
  const { combos } = (await rowsOf(pc)) as { combos: { deletedAt?: number }[] };
  expect(combos.filter(({ deletedAt }) => deletedAt === undefined)).toHaveLength(1);
});
