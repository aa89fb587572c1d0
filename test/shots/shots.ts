import { expect, type Page, test } from "@playwright/test";
import { endSession, logLaps, open, startSession } from "../support/journeys.ts";

/** Photographs every place with the demo logbook and without, on phone and desk, in both themes, into `shots/`. */
const places = [
  "review",
  "review/across",
  "review/statement",
  "targets",
  "rig",
  "rig?field=",
  "rig?part=screen",
  "rig?part=wheel",
  "rig?part=plan",
  "corners",
  "data",
];
const views = [
  { name: "phone", width: 390, height: 844, isTouch: true },
  { name: "narrow", width: 320, height: 640, isTouch: true },
  { name: "sideways", width: 844, height: 390, isTouch: true },
  { name: "desk", width: 1280, height: 800, isTouch: false },
  { name: "wide", width: 1920, height: 1080, isTouch: false },
];

for (const view of views)
  for (const colorScheme of ["light", "dark"] as const)
    test(`${view.name}, ${colorScheme}`, async ({ browser }) => {
      const context = await browser.newContext({
        viewport: { width: view.width, height: view.height },
        colorScheme,
        hasTouch: view.isTouch,
        isMobile: view.isTouch,
        deviceScaleFactor: view.isTouch ? 2 : 1,
        reducedMotion: "reduce",
        timezoneId: "Europe/Berlin",
      });
      const page = await context.newPage();
      const take = photographer(page, `${view.name}-${colorScheme}`, view.isTouch);
      await open(page);
      await take("welcome");
      for (const place of ["review", "targets", "rig", "corners", "data"]) {
        await visit(page, place);
        await take(`empty-${place}`);
      }
      await visit(page, "log");
      await page.getByRole("button", { name: "Load the demo logbook" }).click();
      await page.getByRole("heading", { name: "Start a session" }).waitFor();
      await take("log");
      for (const place of places) {
        await visit(page, place);
        await take(place.replaceAll(/[/?=]/g, "-"));
      }
      await visit(page, "log");
      await startSession(page, "club hatch", "Varnholt Ring");
      await logLaps(page, ["1:25.118", "1:24.930", "1:24.661", "1:24.702", "1:24.588", "1:24.810"]);
      await page.getByRole("button", { name: "End run" }).click();
      await take("between-runs");
      await logLaps(page, ["1:24.402", "4127", "1:27.950 f@5", "4060", "1:24.355 t", "4208"]);
      await page.getByRole("textbox", { name: /^Lap/ }).fill("4912");
      await take("session");
      if (view.name === "desk" && colorScheme === "light") {
        await page.evaluate(() => window.scrollTo(0, 0));
        await page.screenshot({ path: "demo-data/screenshot.png" });
      }
      await page.getByRole("textbox", { name: /^Lap/ }).fill("");
      await endSession(page);
      await page.evaluate(() => window.scrollTo(0, 0));
      await take("ended");
      await context.close();
    });

async function visit(page: Page, place: string) {
  await page.evaluate((hash) => {
    window.location.hash = hash;
  }, `#/${place}`);
  await page.getByRole("heading", { level: 1 }).first().waitFor();
  await settled(page);
}

/** Nothing is being fetched, worked out or moved any more: charts are fetched when they are first shown. */
async function settled(page: Page) {
  await expect(page.getByText(/^(Opening|Drawing|Working out)/)).toHaveCount(0);
  await page.evaluate(async () => {
    const moving = () =>
      document
        .getAnimations()
        .filter(({ effect }) => effect?.getComputedTiming().endTime !== Number.POSITIVE_INFINITY);
    await Promise.allSettled(moving().map(({ finished }) => finished));
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
  });
}

function photographer(page: Page, folder: string, isTouch: boolean) {
  return async (name: string) => {
    await page.waitForLoadState("networkidle");
    await settled(page);
    // A photograph of the whole page would lose the touch screen and move what is fixed; phones are seen as they are.
    await page.screenshot({ path: `shots/${folder}/${name}.png`, fullPage: !isTouch });
  };
}
