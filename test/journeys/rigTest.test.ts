import type { Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { Hand } from "../support/journeyHand.ts";
import {
  endSession,
  expect,
  lapTime,
  logLaps,
  open,
  reading,
  startSession,
  test,
} from "../support/journeys.ts";
import { timeOf } from "../support/journeyTimes.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const day = 86_400_000;
const firstEvening = Date.parse("2027-03-09T19:00:00Z");
const [car, track] = ["club hatch", "Varnholt Ring"];

/** Words in which Log and Rig would say how two settings compare. */
const comparing = /faster|slower|steadier|less steady|as usual|your level|difference of/i;

const panel = (page: Page) => page.getByRole("region", { name: "Rig test" });

/** What the page says besides its tables of laps, in which each lap has its distance to the one before it in its run. */
const said = (page: Page) =>
  page.locator("main").evaluate((main) => {
    const words = main.cloneNode(true) as HTMLElement;
    for (const table of words.querySelectorAll("table")) table.remove();
    return words.textContent ?? "";
  });

/** The setting that Log asks for, and the pair it belongs to. */
async function asked(page: Page): Promise<{ readonly pair: number; readonly side: "A" | "B" }> {
  await expect(panel(page)).toContainText(/Next run: [AB], gain (?:72|54) %/);
  const text = await panel(page).textContent();
  const [, pair, side, gain] = /pair (\d+) of 6\. Next run: ([AB]), gain (\d+) %/.exec(text ?? "") ?? [];
  expect(gain).toBe(side === "A" ? "72" : "54");
  return { pair: Number(pair), side: side === "A" ? "A" : "B" };
}

/** Five laps about the usual lap of that setting: B is three tenths faster, a little more or less from pair to pair. */
function lapsOf({ pair, side }: { readonly pair: number; readonly side: "A" | "B" }): string[] {
  const usual = side === "A" ? 84_400 + pair * 10 : 84_100 + pair * 10 + pair ** 2;
  return [-90, 60, 0, 110, -40].map((off) => timeOf(usual + off));
}

/** Puts the setting on that is asked for, and drives its run to the end. */
async function driveRun(page: Page): Promise<"A" | "B"> {
  const place = await asked(page);
  await panel(page)
    .getByRole("button", { name: /^It is on/ })
    .tap();
  await expect(panel(page)).toContainText(": 0 of 5");
  await logLaps(page, lapsOf(place));
  await expect(panel(page)).toContainText(": 5 of 5");
  expect(await said(page)).not.toMatch(comparing);
  await panel(page).getByRole("button", { name: "End run" }).tap();
  await expect(page.getByRole("heading", { name: "valid", exact: true })).toBeVisible();
  expect(await said(page)).not.toMatch(comparing);
  return place.side;
}

test("a rig test is planned, driven on two evenings and decided by touch, and nothing compares its settings before", async ({
  page,
}) => {
  test.setTimeout(300_000);
  await page.clock.setFixedTime(firstEvening);
  await open(page);
  await startSession(page, car, track);
  // A fast lap first, so that no run of the test brings a PB.
  await logLaps(page, ["1:23.400", "1:24.900", "1:24.800", "1:25.000", "1:24.700"]);
  const hand = new Hand(page);

  // The plan, and a reload half way.
  await page.goto("./#/rig?part=plan");
  const form = page.getByRole("form", { name: "Plan a rig test" });
  await form.getByRole("combobox", { name: "Which value" }).selectOption({ label: "Gain" });
  await expect(form.getByText(/Wheel bases from about 8 N·m/)).toBeVisible();
  await hand.write(form.getByRole("textbox", { name: "A, as it is now" }), "72");
  await page.reload();
  await hand.write(form.getByRole("textbox", { name: "B, what is tried" }), "54");
  await expect(form.getByRole("textbox", { name: "A, as it is now" })).toHaveValue("72");
  await hand.write(form.getByRole("textbox", { name: "Smallest difference that would matter" }), "0.15");
  await hand.write(form.getByRole("textbox", { name: "Laps a run" }), "5");
  await hand.write(form.getByRole("textbox", { name: "Pairs of runs" }), "5");
  await hand.button("Plan the test", form);
  await expect(form.getByText(/5 is out of range/)).toBeVisible();
  await hand.write(form.getByRole("textbox", { name: "Pairs of runs" }), "6");
  await expect(form.getByText(/^6 pairs of runs: 12 runs of 5 laps, about \d evenings$/)).toBeVisible();
  await expect(form.getByRole("textbox", { name: "The question" })).toHaveValue(
    "Does gain 54 % instead of gain 72 % make me faster? Varnholt Ring · club hatch",
  );
  await hand.button("Plan the test", form);
  await expect(page.getByText("0 of 6 pairs driven")).toBeVisible();
  await expect(page.getByText(/Which setting is better: told when the test is over/)).toBeVisible();
  await expectAccessible(page, "the rig test");

  // The first evening: the run of practice ends first; three pairs and a half, one run void, one reload in a run.
  await hand.tap(page.getByRole("link", { name: "Drive it on Log" }));
  await expect(lapTime(page, 5)).toBeVisible();
  await page.getByRole("button", { name: "End run" }).tap();
  const place = await asked(page);
  await panel(page)
    .getByRole("button", { name: /^It is on/ })
    .tap();
  const [first = "", second = ""] = lapsOf(place);
  await hand.laps([first, second]);
  await expect(panel(page)).toContainText(`${place.side}, gain`);
  await expect(panel(page)).toContainText(": 2 of 5");
  expect((await panel(page).boundingBox())?.height).toBeLessThanOrEqual(56);
  await page.reload();
  await expect(panel(page)).toContainText(": 2 of 5");
  await panel(page).getByRole("button", { name: "This run is void" }).tap();
  await page.getByRole("dialog").getByRole("button", { name: "wrong setting on" }).tap();
  expect(await asked(page)).toEqual(place);
  for (let run = 0; run < 7; run++) await driveRun(page);
  await expect(panel(page)).toContainText("pair 4 of 6");
  await endSession(page);
  expect(await said(page)).not.toMatch(comparing);

  // Another evening: the half pair begins anew.
  await page.clock.setFixedTime(firstEvening + 2 * day);
  await open(page, "#/log");
  await startSession(page, car, track);
  await expect(panel(page)).toContainText("pair 4 of 6");
  await expect(panel(page)).toContainText(/begins anew/);
  await panel(page).getByRole("button", { name: "Not tonight" }).tap();
  await expect(panel(page)).toContainText("put off tonight");
  await page.reload();
  await expect(reading(page)).toBeVisible();
  await expect(panel(page)).toContainText("put off tonight");
  await endSession(page);

  await page.clock.setFixedTime(firstEvening + 3 * day);
  await open(page, "#/log");
  await startSession(page, car, track);
  for (let run = 0; run < 6; run++) await driveRun(page);
  await expect(panel(page)).toContainText("every pair is driven");
  await panel(page).getByRole("link", { name: "What it found" }).tap();

  // The verdict, the pairs, and the choice.
  await expect(
    page.getByText(
      /^B \(gain 54 %\) is 0\.\d\d s a lap faster; with 6 pairs the true difference is between 0\.\d\d and 0\.\d\d s, 9 in 10\.$/,
    ),
  ).toBeVisible();
  await expect(page.getByRole("figure", { name: /B was faster in 6 of 6 pairs/ })).toBeVisible();
  await expect(page.getByText(/exact signed-rank test.*It agrees\./)).toBeVisible();
  await hand.tap(page.getByRole("button", { name: /^Which runs counted/ }));
  const runs = page.getByRole("table", { name: "Runs of the test" });
  await expect(runs.getByRole("row", { name: /void: wrong setting on/ })).toBeVisible();
  await expect(runs.getByRole("row", { name: /was not driven that evening/ })).toBeVisible();
  await expectAccessible(page, "the rig test");
  await hand.button("Keep B, gain 54 %");
  await hand.tap(page.getByRole("link", { name: "Its record" }));
  await expect(
    page.getByText(/After a rig test: gain 54 % is 0\.\d\d s a lap faster than gain 72 %\./),
  ).toBeVisible();
  await page.goto("./#/rig");
  await expect(page.getByText(/gain 54 %/).first()).toBeVisible();
});
