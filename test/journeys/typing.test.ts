import {
  entryField,
  expect,
  lapTime,
  logLap,
  logLaps,
  nextLap,
  open,
  pauseToRead,
  reading,
  startSession,
  test,
} from "../support/journeys.ts";

/** Each is refused with what would be right; nothing is stored, and the text stays in the field. */
const refused: readonly (readonly [string, string])[] = [
  ["0", "A lap cannot take no time at all. Write its time"],
  ["0:00.000", "A lap cannot take no time at all. Write its time"],
  ["-83.456", "There is no time before this one to measure from. Write the whole time"],
  ["24:00:00.001", "is over 24 hours. Write a time up to 24 hours"],
  ["1:23.4567", "A time has up to three decimals: “4567” has 4. Write 1:23.456"],
  ["abc", "“a” is not a remark. The remarks are: o out lap"],
  ["12x4", "“x” is not a remark."],
  ["1.23.45.6", "“1.23.45.6” has the shape of no lap time. Write 1:23.456"],
  ["1..5", "“..” stands where one sign belongs. Write 1.5."],
  ["1:75.0", "Seconds go up to 59: 75 is too many. Write 2:15.0 if you mean"],
  ["1:2.3", "Seconds after minutes have two digits: “2” has 1. Write 1:02.3."],
  ["::", "Write 1:23.456"],
  ["+", "“+” is not a difference in seconds. Write +0.6 or -0.25"],
  ["1e5", "“e” is not a remark."],
  ["0x1F", "“x” is not a remark."],
  ["NaN", "“n” is not a remark."],
  ["1²", "The character “²” after “1” is not understood. Write it with plain digits"],
  ["½", "The character “½” at the start is not understood. Write it with plain digits"],
  ["1:23\u200b.456", "There is a zero-width space after “1:23”. Write 1:23.456."],
  ["123", "Three digits alone are not clear"],
  ["9".repeat(400), "A lap has at most 200 characters before its note; this has 400. Write one lap a line"],
];

test("whatever cannot be a lap is refused with what would be right, and stays in the field", async ({
  page,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  for (const [text, says] of refused) {
    await entryField(page).fill(text);
    await entryField(page).press("Enter");
    await expect(entryField(page), text).toHaveAttribute("aria-invalid", "true");
    await expect(reading(page).getByRole("status"), text).toContainText(says);
    await expect(entryField(page), text).toHaveValue(text);
    await expect(entryField(page), text).toBeFocused();
  }
  await expect(lapTime(page, 1)).toBeHidden();
  await logLap(page, "1:23.456");
  expect(await nextLap(page)).toBe(2);
  await entryField(page).fill("-83.456");
  await entryField(page).press("Enter");
  await expect(entryField(page)).toHaveAttribute("aria-invalid", "true");
  await expect(lapTime(page, 2)).toBeHidden();
});

test("digits of other scripts and the quotes of phones are read as what they are", async ({ page }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["１：２３．４５６", "1’23”470", "1:23,480"]);
  for (const [index, time] of ["1:23.456", "1:23.470", "1:23.480"].entries())
    await expect(lapTime(page, index + 1)).toHaveAccessibleName(`Edit lap ${index + 1}: ${time}`);
});

test("Enter twice within five milliseconds makes one lap, and answers no question", async ({ page }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  const bounce = () =>
    entryField(page).evaluate((field) => {
      for (const _ of [1, 2])
        field.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true, cancelable: true }));
    });
  await entryField(page).fill("1:25.118");
  await bounce();
  await expect(lapTime(page, 1)).toBeVisible();
  await logLap(page, "1:25.400");
  await expect(lapTime(page, 3)).toBeHidden();

  // 2 % under the best: a second, separate Enter is asked for, with the reason.
  await entryField(page).fill("1:23.400");
  await bounce();
  await expect(reading(page).getByRole("alert")).toHaveText(
    "1:23.400 would beat your PB, 1:25.118, by 2.0 %. Enter again if it is right.",
  );
  await expect(entryField(page)).toHaveValue("1:23.400");
  await pauseToRead(page);
  await expect(lapTime(page, 3)).toBeHidden();
  await entryField(page).press("Enter");
  await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:23.400");
});

test("a second Enter is asked for when digits make a best, and when a lap without a remark is far off", async ({
  page,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.300", "1:25.250", "1:25.410", "1:25.180"]);
  const asks = reading(page).getByRole("alert");
  await entryField(page).fill("4500");
  await entryField(page).press("Enter");
  await expect(asks).toHaveText(/^The digits were completed to 1:24\.500, a new PB \(before: 1:25\.118\)\./);
  await entryField(page).fill("1:35.400");
  await entryField(page).press("Enter");
  await expect(asks).toHaveText(/^1:35\.400 is 11\.\d % over this session's usual lap and has no remark\./);
  await entryField(page).fill("1:35.400 f");
  await expect(asks).toBeHidden();
  await entryField(page).press("Enter");
  await expect(lapTime(page, 6)).toHaveAccessibleName("Edit lap 6: 1:35.400");
  await entryField(page).fill("1:25.180");
  await entryField(page).press("Enter");
  await expect(lapTime(page, 7)).toBeVisible();
});

test("the same lap twice within a second is asked about", async ({ page }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await page.clock.install();
  await entryField(page).fill("1:25.118");
  await entryField(page).press("Enter");
  await entryField(page).fill("1:25.118");
  await entryField(page).press("Enter");
  await expect(reading(page).getByRole("alert")).toHaveText("The same lap again?");
  await page.clock.runFor(1500);
  await entryField(page).press("Enter");
  await expect(lapTime(page, 2)).toBeVisible();
  await page.clock.runFor(1500);
  await entryField(page).fill("1:25.118");
  await entryField(page).press("Enter");
  await expect(lapTime(page, 3)).toBeVisible();
});
