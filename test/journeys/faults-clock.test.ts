import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Page } from "@playwright/test";
import { storedRows } from "../support/journeyDatabase.ts";
import {
  endSession,
  expect,
  lapTime,
  logLap,
  logLaps,
  open,
  startSession,
  test,
} from "../support/journeys.ts";

test("the driver sees that the clock went back a month between two laps; their order and the session stay", async ({
  page,
}) => {
  await page.clock.install({ time: new Date("2027-11-24T19:00:00Z") });
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  await page.clock.setSystemTime(new Date("2027-10-24T19:00:00Z"));
  await logLap(page, "1:25.340");
  await page.clock.runFor(6000);
  await expect(
    page
      .getByText("This device’s clock stood at Wed 24 Nov 2027 until just now. Now it says Sun 24 Oct 2027.")
      .last(),
  ).toBeVisible();
  for (const [index, time] of ["1:25.118", "1:25.902", "1:25.340"].entries())
    await expect(lapTime(page, index + 1)).toHaveAccessibleName(`Edit lap ${index + 1}: ${time}`);
  await page.reload();
  await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:25.340");
  await expect(page.getByText("This device’s clock stood at")).toHaveCount(0);
  await expect(page.getByRole("button", { name: "End session" })).toBeVisible();
  const [run] = await storedRows(page, "runs");
  const laps = run?.["laps"] as readonly { readonly id: string; readonly updatedAt: number }[];
  expect(new Set(laps.map(({ id }) => id)).size).toBe(3);
  await logLap(page, "1:25.500");
  await endSession(page);
  const [session] = await storedRows(page, "sessions");
  expect(Number(session?.["endedAt"])).toBeGreaterThanOrEqual(Number(session?.["startedAt"]));
});

for (const [night, begin, hours, day] of [
  ["the hour is skipped", "2027-03-28T00:30:00Z", 1, "Saturday 27 March"],
  ["the hour is doubled", "2027-10-30T23:30:00Z", 3, "Saturday 30 October"],
] as const)
  test(`the driver sees the right day and order of a session over the night when ${night}`, async ({
    page,
  }) => {
    // Europe/Berlin: from half past one until half past three by the wall clock.
    const from = Date.parse(begin);
    await page.clock.install({ time: from });
    await open(page);
    await startSession(page, "club hatch", "Varnholt Ring");
    await logLap(page, "1:25.118");
    await expect(page.getByText(day).first()).toBeVisible();
    await page.clock.setSystemTime(from + hours * 3_600_000);
    await logLap(page, "1:25.340");
    await endSession(page);
    const [session] = await storedRows(page, "sessions");
    const lasted = Number(session?.["endedAt"]) - Number(session?.["startedAt"]);
    expect(Math.abs(lasted - hours * 3_600_000)).toBeLessThan(60_000);
    await expect(page.getByText("01:30").first()).toBeVisible();
    await expect(page.getByText(day).first()).toBeVisible();
  });

test("the driver's old sessions keep the date and hour of where they were driven, wherever the browser travels", async ({
  baseURL,
  launchOptions,
}) => {
  const folder = mkdtempSync(join(tmpdir(), "lap-ledger-"));
  const inZone = async (timezoneId: string, work: (page: Page) => Promise<void>) => {
    const options = { ...launchOptions, baseURL: baseURL ?? "", locale: "en-GB", timezoneId };
    const context = await chromium.launchPersistentContext(folder, options);
    await work(await context.newPage());
    await context.close();
  };
  const asDriven = (page: Page) => page.getByText(/Wednesday 24 November.*18:30/).first();
  try {
    await inZone("America/New_York", async (page) => {
      await page.clock.install({ time: new Date("2027-11-24T23:30:00Z") });
      await open(page);
      await startSession(page, "club hatch", "Varnholt Ring");
      await logLap(page, "1:25.118");
      await expect(asDriven(page)).toBeVisible();
    });
    for (const zone of ["Asia/Tokyo", "Pacific/Kiritimati"])
      await inZone(zone, async (page) => {
        await page.clock.install({ time: new Date("2027-11-25T01:30:00Z") });
        await open(page);
        await logLap(page, "1:25.300");
        await expect(asDriven(page)).toBeVisible();
        expect(await storedRows(page, "sessions")).toMatchObject([
          { date: "2027-11-24", zone: "America/New_York" },
        ]);
      });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
