import { Hand } from "../support/journeyHand.ts";
import {
  entryField,
  expect,
  lapTime,
  open,
  reading,
  runBlock,
  runFigure,
  test,
} from "../support/journeys.ts";
import { bestOf, usualOf } from "../support/journeyTimes.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, trace: "off" });

test("an untidy month spoils no figure, and each thing is put right in a few taps", async ({ page }) => {
  test.setTimeout(300_000);
  const hand = new Hand(page);
  const putRight: Record<string, number> = {};
  const says = (run: number) =>
    page.getByRole("region", { name: new RegExp(`^(Verdict of run ${run}|What run ${run} says)$`) }).first();
  const counts = () =>
    page.getByRole("region", { name: "Where this session's time went" }).getByText(/^of \d+ laps?:/);
  const evening = async (date: string) => {
    await page.clock.setSystemTime(new Date(`${date}T19:30:00+01:00`));
    await page.reload();
    await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  };
  const start = async () => {
    await hand.button("Start the session");
    await expect(entryField(page)).toBeFocused();
  };
  const endRun = async () => {
    await hand.button("End run");
    await expect(page.getByRole("button", { name: "End run" })).toBeHidden();
  };
  const end = async () => {
    await hand.button("End session");
    await hand.button("End the session", page.getByRole("dialog"));
    await hand.button("Back to Log");
    await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
  };
  const change = async (run: number, kind: string) => {
    await hand.button(`Change run ${run}`);
    const dialog = page.getByRole("dialog", { name: `Run ${run}` });
    await hand.tap(dialog.getByText(kind, { exact: true }));
    await hand.button("Done", dialog);
    await expect(dialog).toBeHidden();
  };

  await page.clock.install({ time: new Date("2027-03-01T19:30:00+01:00") });
  await open(page);
  await hand.write(page.getByRole("combobox", { name: "Car" }), "club hatch");
  await hand.write(page.getByRole("combobox", { name: "Track layout" }), "Varnholt Ring");
  await start();

  // Warm-up laps, slow on purpose; then a run with an off, and a lap that ended in a wall without a time.
  await hand.laps(["1:35.400", "1:33.200"]);
  putRight["warm-up"] = await hand.counted(() => change(1, "warm-up"));
  await endRun();
  // Kind and effort go back by themselves: nothing to put right before the first lap at pace.
  const monday = ["1:27.400", "1:26.900", "1:26.500", "1:26.700", "1:26.300", "1:26.600"];
  await hand.laps(monday);
  await hand.lap("138100", "off");
  putRight["wall, no time"] = await hand.counted(() => hand.lap("", "contact"));
  await expect(runFigure(page, 2, "best")).toHaveText(bestOf(monday));
  await expect(runFigure(page, 2, "usual")).toHaveText(usualOf(monday));
  await expect(counts()).toHaveText("of 10 laps: 6 pace, 1 with a mistake, 1 without a time, 2 warm-up");
  await end();

  // Half the laps remembered, in tenths: 1:26.3 may be 1:26.399, so it is no new best.
  await evening("2027-03-02");
  await start();
  for (const time of ["1:26.4", "1:26.3", "1:26.8"]) await hand.lap(time);
  await expect(page.getByText("in tenths").first()).toBeVisible();
  putRight["half the laps"] = await hand.counted(async () => {
    await hand.button("Change run 1");
    await hand.write(page.getByLabel("Laps driven, if not all are written"), "6");
    await hand.button("Done", page.getByRole("dialog"));
  });
  await expect(says(1)).toContainText("1:26.3 is the same as your PB, as far as its digits tell.");
  await expect(counts()).toHaveText("of 6 laps: 3 in runs written in part, 3 not written down");
  await end();

  // A wet evening, left open.
  await evening("2027-03-03");
  await start();
  const wet = ["1:36.100", "1:35.800", "1:35.900", "1:36.300", "1:35.700"];
  await hand.laps(wet);
  putRight["wet"] = await hand.counted(() => change(1, "wet"));
  await expect(counts()).toHaveText("of 5 laps: 5 damp or wet");

  // A new circuit the evening after: yesterday's session is ended at its last lap first.
  await evening("2027-03-04");
  await expect(page.getByText("Is it over?")).toBeVisible();
  putRight["yesterday's session"] = await hand.counted(() => hand.button("End it at its last lap"));
  await expect(page.getByText(/^Wednesday 3 March, 19:30 · ended/)).toBeVisible();
  await hand.button("Back to Log");
  await hand.write(page.getByRole("combobox", { name: "Track layout" }), "Ash Ring");
  await start();
  const ash = ["1:52.700", "1:51.900", "1:51.400"];
  await hand.laps(ash);
  await expect(runFigure(page, 1, "best")).toHaveText(bestOf(ash));
  await end();

  // The wrong combo: Ash Ring stands in the form, Varnholt Ring was driven.
  await evening("2027-03-05");
  await start();
  await expect(page.getByRole("heading", { level: 1 })).toContainText("Ash Ring");
  const friday = ["1:26.450", "1:26.700", "1:26.380", "1:26.520", "1:26.600"];
  await hand.laps(friday);
  putRight["wrong combo"] = await hand.counted(async () => {
    await hand.button("Session");
    await hand.tap(page.getByRole("button", { name: /^Wrong combo/ }));
    await hand.button("Varnholt Ring · club hatch", page.getByRole("dialog"));
  });
  await expect(page.getByRole("heading", { level: 1 })).toContainText("Varnholt Ring");
  await expect(runFigure(page, 1, "best")).toHaveText(bestOf(friday));
  await expect(runFigure(page, 1, "usual")).toHaveText(usualOf(friday));
  await expect(page.getByRole("row", { name: /^3 / }).first()).toContainText("+0.080");
  await end();

  // A guest at the wheel, faster than the driver ever was; then a race, then a drill, slow on purpose.
  await evening("2027-03-06");
  await start();
  await hand.laps(["1:24.900", "1:24.700"]);
  await expect(says(1)).toContainText("new PB");
  putRight["guest"] = await hand.counted(() => change(1, "Someone else is driving"));
  await expect(says(1)).toContainText("Someone else drove: this run counts in no figure of yours.");
  await expect(runBlock(page, 1).getByText("PB", { exact: true })).toHaveCount(0);
  await endRun();
  await expect(runBlock(page, 2)).toContainText(
    "Pace and full effort again, and you are driving, after run 1",
  );
  putRight["race"] = await hand.counted(() => change(2, "race"));
  await hand.laps(["1:33.800", "1:27.900", "1:27.500"]);
  await endRun();
  putRight["drill"] = await hand.counted(() => change(3, "drill"));
  await hand.laps(["1:30.100", "1:30.300"]);
  await endRun();
  const saturday = ["1:26.420", "1:26.350", "1:26.510", "1:26.330", "1:26.480"];
  await hand.laps(saturday);
  await expect(runFigure(page, 4, "best")).toHaveText(bestOf(saturday));
  await expect(runFigure(page, 4, "usual")).toHaveText(usualOf(saturday));
  await expect(counts()).toHaveText("of 10 laps: 5 pace, 2 drill, 3 race, 2 laps of guests beside them");
  await expect(lapTime(page, 4)).toBeVisible();
  await end();

  // Two weeks' break, then three laps.
  await evening("2027-03-22");
  await start();
  const three = ["1:26.900", "1:26.290", "1:26.700"];
  await hand.laps(three);
  await expect(says(1)).toContainText("1:26.290 is a new PB, 0.010 s faster than the old one.");
  putRight["not my PB"] = await hand.counted(async () => {
    await hand.tap(lapTime(page, 2));
    await hand.button("Not my PB");
  });
  await expect(says(1)).not.toContainText("new PB");
  await hand.button("Cancel");
  await expect(runFigure(page, 1, "usual")).toHaveText(usualOf(three));
  await expect(counts()).toHaveText("of 3 laps: 3 pace");
  await end();

  // The physics changed: a new page; the old best is no measure any more.
  await evening("2027-03-25");
  await start();
  putRight["new page"] = await hand.counted(async () => {
    await hand.button("Session");
    await hand.tap(page.getByRole("button", { name: /^Layout or physics changed/ }));
    await hand.write(page.getByLabel("What changed"), "new tyre model");
    await hand.button("Turn a new page");
  });
  const after = ["1:28.300", "1:28.100", "1:27.900"];
  await hand.laps(after);
  await expect(says(1)).toContainText("1:27.900 is your PB here, 0.400 s faster than the first, 1:28.300.");
  await expect(runFigure(page, 1, "best")).toHaveText(bestOf(after));
  await expect(page.getByRole("row", { name: /^1 / }).first()).not.toContainText("+");
  await end();

  // Nothing of all that has touched the other circuit.
  await hand.write(page.getByRole("combobox", { name: "Track layout" }), "Ash Ring");
  await start();
  await entryField(page).fill("1:51.500");
  await expect(reading(page)).toContainText("0.100 s off PB");

  test.info().annotations.push({ type: "taps to put right", description: JSON.stringify(putRight) });
  for (const [what, taps] of Object.entries(putRight)) expect(taps, what).toBeLessThanOrEqual(6);
});
