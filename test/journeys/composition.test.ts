import { composeIn, composeInEach, noteKeys } from "../support/journeyComposition.ts";
import {
  endRun,
  entryField,
  expect,
  lapTime,
  logLaps,
  open,
  startSession,
  test,
  unfoldAll,
} from "../support/journeys.ts";

test.beforeEach(({ page }) => noteKeys(page));

test("no key of a composition acts in any field of Log", async ({ page }) => {
  test.setTimeout(180_000);
  await open(page);
  await page.getByRole("button", { name: "Focus, target, conditions, another date" }).click();
  await composeInEach(page, page, "the start of a session");
  await startSession(page, "club hatch", "Varnholt Ring");
  await composeIn(page, entryField(page), "the first lap");
  await logLaps(page, ["1:25.118", "1:25.902", "1:25.340"]);
  await composeIn(page, entryField(page), "the entry line");
  await lapTime(page, 2).click();
  await composeIn(page, page.getByRole("textbox", { name: "Lap 2", exact: true }), "a lap being edited");
  await page.keyboard.press("Escape");
  await endRun(page);
  for (const [button, title] of [
    ["Change run 1", "Run 1"],
    ["Session", "This session"],
    ["Summary run", "A run as a summary"],
    ["End session", "End the session"],
  ] as const) {
    await page.getByRole("button", { name: button, exact: true }).click();
    const dialog = page.getByRole("dialog", { name: title });
    await unfoldAll(dialog);
    await composeInEach(page, dialog, title);
    await page.keyboard.press("Escape");
    await expect(dialog).toBeHidden();
  }
});

test("no key of a composition acts in any field of the other places", async ({ page }) => {
  test.setTimeout(300_000);
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  const visit = async (place: string) => {
    await page.goto(`./#/${place}`);
    await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
    await expect(page.getByText(/^(Opening|Working out)/)).toHaveCount(0);
  };
  await visit("review/search");
  await composeInEach(page, page.getByRole("form", { name: "Search the ledger" }), "search");
  await visit("review/across");
  await page.getByRole("button", { name: "Enter a reference lap" }).click();
  await composeInEach(page, page.getByRole("main"), "a reference lap");

  await visit("targets");
  // Its chances come in late, and would be taken for a change.
  await expect(page.getByRole("button", { name: /^Steps, and what it rests on/ })).toHaveCount(2);
  await page.getByRole("button", { name: "Set a target" }).click();
  await composeInEach(page, page.getByRole("form", { name: "New target" }), "a target");

  await visit("rig?part=record");
  await composeInEach(page, page.getByRole("form", { name: "Something changed" }), "a record of the rig");

  await visit("corners");
  await page.getByRole("link", { name: "replay review", exact: true }).click();
  const review = page.getByRole("form", { name: /^Corner \d+/ });
  await composeInEach(page, review, "a corner of a replay");
  await expect(review).toBeVisible();

  await visit("corners");
  await page.getByRole("link", { name: "layout and car" }).click();
  await page.getByRole("button", { name: "Show measured values" }).click();
  const corners = page.getByRole("table", { name: /^Corners of the layout/ });
  await composeInEach(page, corners.getByRole("row").nth(1), "a corner");
  // The cells of the empty row by their names: as soon as one is typed in, another empty row follows.
  const cell = (name: string) => corners.getByRole("textbox", { name, exact: true }).first();
  const number = await cell("Number, new corner").inputValue();
  const names = await corners
    .getByRole("textbox", { name: new RegExp(`, corner ${number}$`) })
    .evaluateAll((cells) => cells.map((one) => one.getAttribute("aria-label") ?? ""));
  expect(names.length).toBeGreaterThan(5);
  for (const name of ["Number, new corner", ...names]) await composeIn(page, cell(name), name);
  await composeInEach(page, page.getByRole("region", { name: "Car" }), "the car of a combo");
  await page.getByRole("button", { name: "Paste from a spreadsheet" }).click();
  await composeInEach(page, page.getByRole("dialog"), "corners from a spreadsheet");
  await page.keyboard.press("Escape");

  await visit("data");
  await page.getByRole("button", { name: "Rename" }).first().click();
  await page.getByRole("button", { name: /^Paste a table/ }).click();
  await composeInEach(page, page.getByRole("main"), "data");
  await page.getByRole("button", { name: "Erase everything" }).click();
  await composeInEach(page, page.getByRole("alertdialog"), "erasing");
});

test("no key of a composition acts in the gain's sum and in the plan of a rig test", async ({ page }) => {
  test.setTimeout(180_000);
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  for (const part of ["wheel", "plan"]) {
    await page.goto(`./#/rig?part=${part}`);
    await expect(page.getByRole("textbox").first()).toBeVisible();
    await composeInEach(page, page.getByRole("main"), part);
  }
});
