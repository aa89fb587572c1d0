import type { Locator, Page } from "@playwright/test";
import { Hand } from "../support/journeyHand.ts";
import {
  endSession,
  entryField,
  expect,
  logLaps,
  open,
  reading,
  runBlock,
  startSession,
  test,
} from "../support/journeys.ts";

/** The lower edge of the window that is free: above the bar of a phone. */
async function free(page: Page): Promise<number> {
  const bar = await page.getByRole("navigation", { name: "Places" }).boundingBox();
  const height = page.viewportSize()?.height ?? 0;
  return bar !== null && bar.y > height / 2 ? bar.y : height;
}

const bottom = async (part: Locator) => {
  const box = await part.boundingBox();
  return box === null ? Number.POSITIVE_INFINITY : box.y + box.height;
};

for (const [width, height] of [
  [390, 844],
  [390, 664],
  [844, 390],
  [1280, 800],
] as const)
  test(`the first page shows what it is, its picture and both ways on above the fold at ${width} × ${height}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await open(page);
    const fold = await free(page);
    for (const part of [
      page.getByText(/^Type your lap times between two runs/),
      page.getByRole("figure"),
      page.getByRole("combobox", { name: "Car" }),
      page.getByRole("combobox", { name: "Track layout" }),
      page.getByRole("button", { name: "Start the session" }),
      page.getByRole("button", { name: "Load the demo logbook" }),
    ])
      expect(await bottom(part)).toBeLessThanOrEqual(fold);
    await expect(page.getByRole("combobox", { name: "Car" })).toBeFocused();
  });

/** Keeps parts of the app from coming until what this gives is called. */
async function holdBack(page: Page, parts: RegExp): Promise<() => void> {
  let letCome: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    letCome = resolve;
  });
  await page.route(parts, async (route) => {
    await held;
    await route.continue();
  });
  return letCome;
}

for (const [width, height] of [
  [390, 664],
  [844, 390],
  [1280, 800],
] as const)
  test(`the button that starts the first session stands still while the picture and the demo come in, at ${width} × ${height}`, async ({
    page,
  }) => {
    const letCome = await holdBack(page, /assets\/(LoadDemo|DemoPicture)-/);
    await page.setViewportSize({ width, height });
    await page.goto("./", { waitUntil: "commit" });
    const start = page.getByRole("button", { name: "Start the session" });
    const demo = page.getByRole("button", { name: "Load the demo logbook" });
    await expect(start).toBeVisible();
    await expect(demo).toBeDisabled();
    await expect(page.getByRole("figure")).toHaveCount(0);
    const before = await start.boundingBox();
    letCome();
    await expect(demo).toBeEnabled();
    await expect(page.getByRole("figure")).toBeVisible();
    expect(await start.boundingBox()).toEqual(before);
  });

test.describe("with nothing kept on the device", () => {
  // What the device keeps of the app could not be held back.
  test.use({ serviceWorkers: "block" });

  test("on a phone the form for another combo is there once it stands still under the combos driven last", async ({
    page,
  }) => {
    await page.setViewportSize({ width: 390, height: 664 });
    await open(page);
    await page.getByRole("button", { name: "Load the demo logbook" }).click();
    await expect(page.getByRole("button", { name: "Same as last time" })).toBeVisible();
    const letCome = await holdBack(page, /assets\/Lately-.*\.js/);
    await page.reload({ waitUntil: "commit" });
    const start = page.getByRole("button", { name: "Start the session" });
    await expect(page.locator("form")).toBeAttached();
    await expect(start).toBeHidden();
    letCome();
    await expect(start).toBeVisible();
    const before = await start.boundingBox();
    await expect(page.getByRole("region", { name: "Tonight, by your figures" })).toBeVisible();
    expect(await start.boundingBox()).toEqual(before);
  });
});

test("a first session is typed without the mouse: car, track, Enter", async ({ page }) => {
  await open(page);
  await expect(page.getByRole("combobox", { name: "Car" })).toBeFocused();
  await page.keyboard.type("club hatch");
  await page.keyboard.press("Tab");
  await page.keyboard.type("Varnholt Ring");
  await page.keyboard.press("Enter");
  await expect(entryField(page)).toBeFocused();
});

test("what a link of the first page asks for on Data is in sight and has the focus", async ({ page }) => {
  await open(page);
  await page.getByRole("link", { name: "Restore a backup" }).click();
  const heading = page.getByRole("heading", { name: "Restore" });
  await expect(heading).toBeFocused();
  await expect(heading).toBeInViewport();
});

test("Data asked for the preferences has them open and in sight", async ({ page }) => {
  await open(page, "#/data?part=preferences");
  await page.getByRole("heading", { name: "Data", exact: true }).waitFor();
  await expect(page.getByRole("heading", { name: "Preferences" })).toBeInViewport();
  await expect(page.getByRole("radio", { name: "dark" })).toBeVisible();
});

test.describe("by one thumb on a phone", () => {
  test.use({ viewport: { width: 390, height: 664 }, hasTouch: true, isMobile: true });

  test("the first page brings up no keyboard by itself", async ({ page }) => {
    await open(page);
    await expect(page.getByRole("combobox", { name: "Car" })).toBeVisible();
    await expect(page.getByRole("combobox", { name: "Car" })).not.toBeFocused();
  });

  test("a session of the wrong combo goes to a new one in six taps and the typing, laps and all", async ({
    page,
  }) => {
    const hand = new Hand(page);
    await open(page);
    await startSession(page, "club hatch", "Varnholt Ring");
    await logLaps(page, ["1:25.118", "1:24.930"]);
    hand.taps = 0;
    await hand.button("Session");
    await hand.tap(page.getByRole("button", { name: /^Wrong combo/ }));
    await hand.write(page.getByRole("combobox", { name: "Car" }), "kart");
    await hand.write(page.getByRole("combobox", { name: "Track layout" }), "Sand Hollow");
    const move = page.getByRole("button", { name: "Move the session" });
    await expect(move).toBeInViewport();
    await hand.tap(move);
    await expect(page.getByRole("heading", { level: 1, name: "Sand Hollow · kart" })).toBeVisible();
    expect(hand.taps).toBeLessThanOrEqual(6);
    await expect(runBlock(page, 1).getByText("1:24.930").first()).toBeAttached();
    await page.getByRole("button", { name: "Undo" }).tap();
    await expect(page.getByRole("heading", { level: 1, name: "Varnholt Ring · club hatch" })).toBeVisible();
  });

  test("what was just done is said clear of the entry line and its keys", async ({ page }) => {
    await open(page);
    await startSession(page, "club hatch", "Varnholt Ring");
    await logLaps(page, ["1:25.118", "1:24.930"]);
    await page.getByRole("button", { name: "Session", exact: true }).tap();
    await page.getByRole("button", { name: /^Wrong combo/ }).tap();
    await page.getByRole("combobox", { name: "Car" }).fill("kart");
    await page.getByRole("button", { name: "Move the session" }).tap();
    const undo = page.getByRole("button", { name: "Undo" });
    await expect(undo).toBeVisible();
    const entry = await reading(page).boundingBox();
    expect(await bottom(undo)).toBeLessThanOrEqual(entry?.y ?? 0);
  });

  test("the evening goes on with one tap, and a mistaken end with another", async ({ page }) => {
    await open(page);
    await startSession(page, "club hatch", "Varnholt Ring");
    await logLaps(page, ["1:25.118"]);
    await endSession(page, "");
    await page.getByRole("button", { name: "Go on with run 1" }).tap();
    await expect(entryField(page)).toBeVisible();
    await endSession(page, "");
    await page.getByRole("button", { name: "Back to Log" }).tap();
    await page.getByRole("button", { name: "Same as last time" }).tap();
    await expect(entryField(page)).toBeVisible();
  });
});
