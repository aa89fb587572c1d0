import type { Page } from "@playwright/test";
import { storedRows } from "../support/journeyDatabase.ts";
import { endSession, expect, goTo, logLap, open, startSession, test } from "../support/journeys.ts";

test("the driver travels with the page open: each session keeps the date and hour of where it was driven", async ({
  browser,
}) => {
  // A context with a zone of its own would not follow the device.
  const context = await browser.newContext({ timezoneId: undefined as unknown as string });
  const page = await context.newPage();
  const cdp = await context.newCDPSession(page);
  const travelTo = async (timezoneId: string) => {
    await cdp.send("Emulation.setTimezoneOverride", { timezoneId });
    const zone = () => page.evaluate(() => Intl.DateTimeFormat().resolvedOptions().timeZone);
    expect(await zone()).toBe(timezoneId);
  };
  const head = (words: RegExp) => page.getByText(words).first();
  const inNewYork = /Wednesday 24 November.*18:30/;
  const onKiritimati = /Thursday 25 November.*13:31/;

  await page.clock.install({ time: new Date("2027-11-24T23:30:00Z") });
  await travelTo("America/New_York");
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  await expect(head(inNewYork)).toBeVisible();

  await travelTo("Asia/Tokyo");
  await logLap(page, "1:25.300");
  await endSession(page, "begun in one zone");
  await expect(head(inNewYork)).toBeVisible();

  // The form of the next session stands there already when the device arrives.
  await page.getByRole("button", { name: "Back to Log" }).click();
  await expect(page.getByRole("button", { name: "Start the session" })).toBeVisible();
  await travelTo("America/New_York");
  await page.clock.runFor(60_000);
  await travelTo("Pacific/Kiritimati");
  await page.getByRole("button", { name: "Start the session" }).click();
  await logLap(page, "1:25.500");
  await endSession(page, "driven where it was tomorrow already");
  await expect(head(onKiritimati)).toBeVisible();
  const asDriven = [
    { date: "2027-11-24", zone: "America/New_York" },
    { date: "2027-11-25", zone: "Pacific/Kiritimati" },
  ];
  expect((await storedRows(page, "sessions")).toSorted(byStart)).toMatchObject(asDriven);

  for (const zone of ["America/New_York", "Pacific/Kiritimati", "Asia/Tokyo", "America/New_York"]) {
    await travelTo(zone);
    await keepsItsDates(page);
  }
  await page.reload();
  await keepsItsDates(page);
  await page
    .getByRole("table", { name: "Last sessions" })
    .getByRole("link", { name: "Thu 25 Nov 2027" })
    .click();
  await expect(head(onKiritimati)).toBeVisible();
  await page.getByRole("button", { name: "Session", exact: true }).click();
  const date = page.getByRole("dialog").getByLabel("Date", { exact: true });
  await expect(date).toHaveValue("2027-11-25");
  await expect(page.getByText("after tomorrow")).toHaveCount(0);
  await date.fill("2027-11-26");
  await expect(page.getByText("is dated Fri 26 Nov 2027, after tomorrow")).toBeVisible();
  await date.fill("2027-11-25");
  await date.blur();
  await expect(page.getByText("after tomorrow")).toHaveCount(0);
  expect((await storedRows(page, "sessions")).toSorted(byStart)).toMatchObject(asDriven);
  await context.close();
});

const byStart = (a: Record<string, unknown>, b: Record<string, unknown>) =>
  Number(a["startedAt"]) - Number(b["startedAt"]);

/** Wherever a place says when something was driven, it is the day it was there. */
async function keepsItsDates(page: Page): Promise<void> {
  await goTo(page, "Review");
  const sessions = page.getByRole("table", { name: "Sessions, newest first" }).getByRole("link");
  await expect(sessions).toHaveText(["Thu 25 Nov 2027", "Wed 24 Nov 2027"]);
  await goTo(page, "Log");
  const last = page.getByRole("table", { name: "Last sessions" }).getByRole("link");
  await expect(last).toHaveText(["Thu 25 Nov 2027", "Wed 24 Nov 2027"]);
}
