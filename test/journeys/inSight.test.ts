import type { Locator, Page } from "@playwright/test";
import {
  endRun,
  entryField,
  expect,
  lapTime,
  logLaps,
  open,
  runBlock,
  startSession,
  test,
} from "../support/journeys.ts";

const ten = [
  "1:25.118",
  "1:25.902",
  "1:26.340",
  "1:25.488",
  "1:26.011",
  "1:25.702",
  "1:25.350",
  "1:26.204",
  "1:25.912",
  "1:25.266",
];

const boxOf = async (part: Locator) => (await part.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };

async function driveTen(page: Page): Promise<void> {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring", { target: "1:25.000" });
  await logLaps(page, ten);
}

/** Ends the session from the end of its page, and finds the page at its top with the focus on its heading. */
async function endAndLook(page: Page, press: (button: Locator) => Promise<void>): Promise<void> {
  await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
  await press(page.getByRole("button", { name: "End session" }));
  const dialog = page.getByRole("dialog", { name: "End the session" });
  await press(dialog.getByRole("button", { name: "End the session" }));
  await expect(page.getByRole("button", { name: "Back to Log" })).toBeVisible();
  await expect(page.getByRole("region", { name: "Where this session's time went" })).toBeVisible();
  const heading = page.getByRole("heading", { level: 1, name: "club hatch" });
  await expect(heading).toBeFocused();
  await expect(heading).toBeInViewport({ ratio: 1 });
  await expect.poll(() => page.evaluate(() => window.scrollY)).toBe(0);
}

const byMouse = (button: Locator) => button.click();
const byKeyboard = async (button: Locator) => {
  await button.focus();
  await button.press("Enter");
};

for (const [means, press] of [
  ["mouse", byMouse],
  ["keyboard", byKeyboard],
] as const)
  test(`a session ended by ${means} on a desk opens at its top`, async ({ page }) => {
    await page.setViewportSize({ width: 1280, height: 800 });
    await driveTen(page);
    await endRun(page);
    await logLaps(page, ten);
    await endAndLook(page, press);
  });

test("after ten laps on a desk the newest lap, the heads of the columns and the finding are in sight", async ({
  page,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await driveTen(page);
  await logLaps(page, ["1:25.400", "1:25.500"]);
  const entry = await boxOf(page.getByRole("region", { name: "Entry" }));
  const head = await boxOf(runBlock(page, 1).getByRole("columnheader", { name: "to last clean" }));
  expect(head.y).toBeGreaterThanOrEqual(entry.y + entry.height - 1);
  await expect(lapTime(page, 12)).toBeInViewport({ ratio: 1 });
  await expect(page.getByRole("heading", { name: "What run 1 says" })).toBeInViewport({ ratio: 1 });
  const bar = await boxOf(page.getByRole("banner"));
  expect((await boxOf(page.getByRole("heading", { name: "What run 1 says" }))).y).toBeGreaterThan(
    bar.y + bar.height,
  );

  // A lap that gets the focus from below stands under the heads, not behind them.
  await lapTime(page, 1).focus();
  const first = await boxOf(lapTime(page, 1));
  const headNow = await boxOf(runBlock(page, 1).getByRole("columnheader", { name: "to last clean" }));
  expect(first.y).toBeGreaterThanOrEqual(headNow.y + headNow.height - 1);
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test("after ten laps the newest lap, the heads, the distance to the target and the finding are in sight", async ({
    page,
  }) => {
    await driveTen(page);
    const head = runBlock(page, 1).getByRole("columnheader", { name: "to target" });
    await expect(head).toBeInViewport({ ratio: 1 });
    const entry = await boxOf(page.getByRole("region", { name: "Entry" }));
    const last = await boxOf(lapTime(page, 10));
    expect(last.y + last.height).toBeLessThanOrEqual(entry.y);
    await expect(runBlock(page, 1).getByText("+0.266 to target")).toBeInViewport({ ratio: 1 });
    await expect(page.getByText("1:25.118 is your first PB here.").first()).toBeInViewport({ ratio: 1 });

    await entryField(page).fill("27.100 33.418 24.600");
    const [field, seen] = await entryField(page).evaluate((one: HTMLInputElement) => [
      one.clientWidth,
      one.scrollWidth,
    ]);
    expect(seen).toBeLessThanOrEqual(field ?? 0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  });

  test("an ended session opens at its top", async ({ page }) => {
    await driveTen(page);
    await endRun(page);
    await logLaps(page, ten);
    await endAndLook(page, (button) => button.tap());
  });
});
