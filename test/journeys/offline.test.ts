import type { BrowserContext, Page } from "@playwright/test";
import { buildFolder, serve } from "../support/journeyServer.ts";
import { expect, goTo, lapTime, logLap, logLaps, open, startSession, test } from "../support/journeys.ts";

/** Waits until the page is served by the worker that keeps it for later. */
async function keptForLater(page: Page): Promise<void> {
  await expect
    .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state))
    .toBe("activated");
  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
}

/** Every place opens and the laps go on, with the network away. */
async function everythingWorksOffline(page: Page, context: BrowserContext): Promise<void> {
  await context.setOffline(true);
  await page.reload();
  await expect(lapTime(page, 10)).toBeVisible();
  await logLap(page, "1:25.222");
  await expect(page.getByRole("figure").first()).toBeVisible();
  for (const place of ["Targets", "Rig", "Corners", "Data", "Review"] as const) {
    await goTo(page, place);
    await expect(page.getByRole("main").getByRole("heading", { level: 1 })).toBeVisible();
    await expect(page.getByText("could not be shown")).toHaveCount(0);
  }
  await expect(page.getByRole("main").getByRole("figure").first()).toBeVisible();
  await context.setOffline(false);
}

const typed = Array.from({ length: 10 }, (_, index) => `1:25.${String(300 + index * 37)}`);

test("after one visit everything works without a network", async ({ page, context }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring", { target: "1:25.000" });
  await logLaps(page, typed);
  await keptForLater(page);
  await everythingWorksOffline(page, context);
});

test.describe("under a path of any host", () => {
  test.use({ baseURL: "" });
  test("after one visit everything works without a network", async ({ page, context }) => {
    const served = await serve(buildFolder, "/some/path/");
    try {
      await page.goto(served.url);
      await startSession(page, "club hatch", "Varnholt Ring", { target: "1:25.000" });
      await logLaps(page, typed);
      await keptForLater(page);
      await everythingWorksOffline(page, context);
    } finally {
      await served.close();
    }
  });
});
