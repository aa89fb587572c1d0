import type { Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { endSession, expect, goTo, logLaps, open, startSession, test } from "../support/journeys.ts";
import { timeOf } from "../support/journeyTimes.ts";

const [car, track] = ["club hatch", "Varnholt Ring"];
const day = 86_400_000;
const firstEvening = Date.parse("2027-03-02T19:30:00+01:00");

/** Laps of an evening about a time: uneven as laps are, the same at every run of the journey. */
const lapsAbout = (ms: number) => [210, -40, 120, -110, 60, -90].map((off) => timeOf(ms + off));

/** Drives an evening so many days after the first, from its start to its end. */
async function driveEvening(page: Page, after: number, laps: readonly string[]): Promise<void> {
  await page.clock.setFixedTime(firstEvening + after * day);
  await open(page, "#/log");
  await startSession(page, car, track);
  await logLaps(page, laps);
  await endSession(page);
}

const chance = (page: Page) => page.getByText(/^[A-Z].* by Thu 1 Apr 2027: .*chances? in 20\.$/);
const heading = (page: Page) => page.getByRole("heading", { level: 3, name: "best lap 1:23.400" });

test("a target is set, its chance follows the evenings and the practice counted on, it is reached, and its record says so", async ({
  page,
}) => {
  test.setTimeout(240_000);
  for (const [after, usual] of [
    [0, 84_900],
    [3, 84_600],
    [6, 84_350],
  ] as const)
    await driveEvening(page, after, lapsAbout(usual));

  // Set, half typed over a reload.
  await goTo(page, "Targets");
  await page.getByRole("button", { name: "Set a target" }).click();
  const form = page.getByRole("form", { name: "New target" });
  await form.getByLabel("Time to reach").fill("1:23.4");
  await form.getByLabel("By").fill("2027-04-01");
  await page.reload();
  await expect(form.getByLabel("Time to reach")).toHaveValue("1:23.4");
  await form.getByLabel("What it is for, if you like").fill("The club race in April");
  await expect(form.getByRole("region", { name: "Its chance" }).getByText(/chances? in 20\.$/)).toBeVisible();
  await form.getByRole("button", { name: "Set target" }).click();
  const again = form.getByRole("button", { name: "Set it all the same" });
  await expect(heading(page).or(again)).toBeVisible();
  if (await again.isVisible()) await again.click();
  await expect(heading(page)).toBeFocused();
  await expect(page.getByText("The club race in April")).toBeVisible();
  await expect(page.getByText("Little more than a guess: it rests on 3 sessions.")).toBeVisible();
  const atFirst = (await chance(page).textContent()) ?? "";
  await page.reload();
  await expect(chance(page)).toHaveText(atFirst);
  await expectAccessible(page, "a target with its chance");

  // Other practice counted on: the likely days follow at once, and it stays.
  // The chance itself may begin with the same words; the days stand under it.
  const dates = page.getByText(/^As likely as not by|^Less likely than not within|^Very likely by/).last();
  const asLately = (await dates.textContent()) ?? "";
  await page.getByLabel("Sessions a week").fill("0.2");
  await expect(dates).not.toHaveText(asLately);
  await page.reload();
  await expect(page.getByLabel("Sessions a week")).toHaveValue("0.2");
  await page.getByRole("button", { name: /^As (in the last six weeks|driven since)/ }).click();
  await expect(dates).toHaveText(asLately);

  // Two more evenings: the first changes the chance, the second reaches the target.
  await driveEvening(page, 9, lapsAbout(83_950));
  await goTo(page, "Targets");
  await expect(chance(page)).toBeVisible();
  await expect(page.getByText("Little more than a guess", { exact: false })).toHaveCount(0);
  await expect(chance(page)).not.toHaveText(atFirst);
  const then = (await chance(page).textContent()) ?? "";
  await page.reload();
  await expect(chance(page)).toHaveText(then);
  await driveEvening(page, 12, [...lapsAbout(83_900), "1:23.390"]);
  await goTo(page, "Targets");
  await expect(page.getByText("Reached on Sun 14 Mar 2027.")).toBeVisible();
  await page.reload();
  await expect(page.getByText("Reached on Sun 14 Mar 2027.")).toBeVisible();
  await expect(chance(page)).toHaveCount(0);

  // Its date passes: what was said of it is judged.
  await page.clock.setFixedTime(firstEvening + 31 * day);
  await open(page, "#/targets");
  await page.getByRole("link", { name: "What became of the chances" }).click();
  const said = page.getByRole("button", { name: /^Best lap 1:23\.400 by Thu 1 Apr 2027/ });
  await expect(said).toBeVisible();
  await expect(said).toContainText("Reached");
  await page.reload();
  await expect(said).toContainText("Reached");
});

test("a target of each kind stands in order of its date, is changed with its history, and archived", async ({
  page,
}) => {
  test.setTimeout(180_000);
  await page.clock.setFixedTime(Date.parse("2026-12-01T19:30:00+01:00"));
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await page.getByRole("heading", { name: "Start a session" }).waitFor();
  await page.goto("./#/targets");
  const combo = page.getByRole("region", { name: "Varnholt Ring · club hatch" });
  const set = async (kind: string, by: string, fill: Readonly<Record<string, string>>) => {
    await page.getByRole("button", { name: "Set a target" }).click();
    const form = page.getByRole("form", { name: "New target" });
    await form.getByLabel("Combo").selectOption("Varnholt Ring · club hatch");
    await form.getByText(kind, { exact: true }).click();
    for (const [label, text] of Object.entries(fill))
      await form.getByLabel(label, { exact: true }).fill(text);
    await form.getByLabel("By").fill(by);
    await form.getByRole("button", { name: "Set target" }).click();
    await expect(form).toBeHidden();
  };
  await set("mean of laps in a row", "2026-12-30", { "Laps in a row": "5", "Time to reach": "1:23.900" });
  await set("scatter", "2026-12-05", { "Scatter to reach": "0.12" });
  await set("share of clean laps", "2026-12-25", { "Share to reach": "98" });
  const headings = combo.getByRole("heading", { level: 3 }).filter({ hasNotText: "Archive" });
  const inOrder = [
    "scatter ± 0.12 s",
    "best lap 1:23.300",
    "usual lap 1:24.000",
    "share of clean laps 98.0 %",
    "mean of 5 laps 1:23.900",
  ];
  for (const _ of [1, 2]) {
    await expect(headings).toHaveText(inOrder);
    await page.reload();
  }
  const mean = combo.getByRole("listitem").filter({ has: page.getByRole("heading", { name: /^mean of 5/ }) });
  await expect(mean.getByText(/chances? in 20\.$/)).toBeVisible();
  await expect(mean.getByRole("img", { name: /^The way from/ })).toBeVisible();

  // Changed on a later day: what it was stays readable.
  await page.clock.setFixedTime(Date.parse("2026-12-03T19:30:00+01:00"));
  await page.reload();
  await mean.getByRole("button", { name: /^Edit/ }).click();
  const form = page.getByRole("form", { name: "Change the target" });
  await form.getByLabel("Time to reach").fill("1:23.950");
  await form.getByRole("button", { name: "Store changes" }).click();
  const changed = combo.getByRole("button", { name: /^Changed\s*on Thu 3 Dec 2026/ });
  await changed.click();
  await expect(
    combo.getByText("Until Thu 3 Dec 2026: mean of 5 laps 1:23.900 by Wed 30 Dec 2026"),
  ).toBeVisible();

  // Put into the archive, and still there after a reload.
  await combo.getByRole("button", { name: /^Archive: Scatter/ }).click();
  await expect(headings.filter({ hasText: "scatter" })).toHaveCount(0);
  await page.reload();
  await expect(headings.filter({ hasText: "scatter" })).toHaveCount(0);
  await combo.getByRole("button", { name: /^Archive\s*3 targets/ }).click();
  await expect(combo.getByRole("button", { name: /^Take out of the archive: Scatter/ })).toBeVisible();
});
