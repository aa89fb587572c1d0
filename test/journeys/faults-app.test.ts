import { savedBackup } from "../support/journeyDatabase.ts";
import {
  endSession,
  entryField,
  expect,
  goTo,
  lapTime,
  logLap,
  logLaps,
  open,
  startSession,
  test,
} from "../support/journeys.ts";

// The worker that keeps the app for later would answer in place of the server that is made to fail here.
test.use({ serviceWorkers: "block" });

const sessionFile = "**/assets/SessionPage-*.js";

test("the driver goes on logging, and can back up, when the page of a session cannot be drawn", async ({
  page,
  expected,
}) => {
  expected.push(/Failed to load resource|Failed to fetch dynamically|ERR_FAILED/);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  await endSession(page);
  await page.route(sessionFile, (route) => route.abort());
  await page.reload();
  await expect(page.getByRole("alert").filter({ hasText: "could not be shown" }).first()).toBeVisible();
  await expect(page.getByText("What is stored has not been changed.").first()).toBeVisible();
  await goTo(page, "Data");
  const { backup } = await savedBackup(page, "Save a backup");
  expect(backup.counts).toMatchObject({ sessions: 1, runs: 1 });
  await page.unroute(sessionFile);
  await page.goto("./#/log");
  await page.reload();
  await page.getByRole("combobox", { name: "Car" }).waitFor();
  await startSession(page, "club hatch", "Sand Hollow");
  await logLap(page, "1:31.000");
  await page.reload();
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:31.000");
});

test("a part of the app that is cut off once on its way comes with the page loaded anew, and what was typed is still there", async ({
  page,
  expected,
}) => {
  expected.push(/Failed to load resource|ERR_FAILED/);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  await entryField(page).fill("1:25.3");
  let cutOff = 0;
  await page.route("**/assets/TargetsScreen-*.js", (route) => {
    cutOff += 1;
    return cutOff === 1 ? route.abort("aborted") : route.continue();
  });
  await goTo(page, "Targets");
  await expect(page.getByRole("heading", { level: 1, name: "Targets" })).toBeVisible();
  expect(cutOff).toBe(2);
  await goTo(page, "Log");
  await expect(entryField(page)).toHaveValue("1:25.3");
});

const workerFile = "**/assets/worker-*.js";
for (const [what, body] of [
  ["cannot be fetched", undefined],
  ["fails", "throw new Error('on purpose');"],
  ["hangs", "for (;;);"],
] as const)
  test(`the driver reads that the figures could not be worked out when their worker ${what}, and may try again`, async ({
    page,
    expected,
  }) => {
    test.setTimeout(120_000);
    expected.push(/on purpose|Failed to load resource|worked out|ERR_FAILED/);
    await page.route(workerFile, (route) =>
      body === undefined ? route.abort() : route.fulfill({ contentType: "text/javascript", body }),
    );
    await open(page);
    await startSession(page, "club hatch", "Varnholt Ring");
    await logLaps(page, ["1:25.118", "1:25.902", "1:25.340"]);
    await goTo(page, "Review");
    await expect(
      page
        .getByRole("main")
        .getByText(/figures could not be worked out/)
        .first(),
    ).toBeVisible({ timeout: 45_000 });
    await goTo(page, "Log");
    await logLap(page, "1:25.500");
    await page.unroute(workerFile);
    await goTo(page, "Review");
    const again = page.getByRole("main").getByRole("button", { name: "Try again" }).first();
    if (await again.isVisible()) await again.click();
    await expect(page.getByRole("main").getByText(/could not be worked out/)).toHaveCount(0);
    await expect(page.getByRole("main").getByRole("heading", { level: 1 })).toBeVisible();
    await goTo(page, "Log");
    await expect(entryField(page)).toBeVisible();
  });
