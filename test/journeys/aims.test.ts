import type { Page } from "@playwright/test";
import { expect, logLaps, open, startSession, test } from "../support/journeys.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

async function demo(page: Page): Promise<void> {
  await open(page);
  await page.getByRole("button", { name: "Load the demo logbook" }).click();
  await expect(page.getByRole("heading", { name: "Start a session" })).toBeVisible();
}

test("one value of the rig is changed from a session in at most five taps, and the session goes on", async ({
  page,
}) => {
  await demo(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.930"]);
  await page.evaluate(() => {
    const body = document.body;
    body.dataset["taps"] = "0";
    addEventListener(
      "pointerdown",
      () => (body.dataset["taps"] = String(Number(body.dataset["taps"]) + 1)),
      true,
    );
  });
  await page.getByRole("link", { name: "Something changed" }).tap();
  await page.getByRole("link", { name: /^Gain/ }).tap();
  const gain = page.getByRole("textbox", { name: "Gain" });
  await expect(gain).toBeFocused();
  await expect(page.getByText("from about 8 N·m can injure")).toBeVisible();
  await page.keyboard.type("58");
  await page.getByRole("button", { name: "Store" }).tap();
  await expect(page.getByRole("heading", { level: 1, name: /Varnholt Ring/ })).toBeVisible();
  await expect(page.getByRole("button", { name: /^Edit lap 2: / }).first()).toBeVisible();
  expect(Number(await page.evaluate(() => document.body.dataset["taps"]))).toBeLessThanOrEqual(5);
  await page.evaluate(() => {
    window.location.hash = "#/rig";
  });
  await expect(page.getByText("gain 58 %", { exact: true })).toBeVisible();
  await expect(page.getByText("gain 54 % to 58 %").first()).toBeVisible();
});

test("a value that is tried shows its chance, and the new target is scrolled to", async ({ page }) => {
  await demo(page);
  await page.goto("./#/targets");
  await page.getByRole("button", { name: "Set a target" }).tap();
  const form = page.getByRole("form", { name: "New target" });
  await form.getByLabel("Combo").selectOption("Varnholt Ring · club hatch");
  await expect(form.getByText(/Best so far 1:23\.744/)).toBeVisible();
  await form.getByLabel("Time to reach").fill("1:23.600");
  const chance = form.getByRole("region", { name: "Its chance" });
  await expect(chance.getByText(/ chances? in 20\.$/)).toBeVisible();
  await expect(chance.getByText("1:23.600")).toBeVisible();
  const said = await chance.getByText(/ chances? in 20\.$/).textContent();
  await form.getByLabel("Time to reach").fill("1:23.500");
  await expect(chance.getByText("1:23.500")).toBeVisible();
  await form.getByLabel("Time to reach").fill("1:23.600");
  await expect(chance.getByText("1:23.600")).toBeVisible();
  await expect(chance.getByText(said ?? "")).toBeVisible();
  await form.getByRole("button", { name: "Set target" }).tap();
  const heading = page.getByRole("heading", { level: 3, name: "best lap 1:23.600" });
  await expect(heading).toBeFocused();
  await expect(heading).toBeInViewport();
  await expect(page.getByText(said ?? "")).toBeVisible();
});

const missed = "Missed. Your best lap in that time: 56.096, not faster than the 56.092 it was set at.";

test("a missed target is renewed in one press", async ({ page }) => {
  await demo(page);
  await page.goto("./#/targets");
  await expect(page.getByText(missed)).toBeVisible();
  await page.getByRole("button", { name: /^Same time, new date: / }).tap();
  const heading = page.getByRole("heading", { level: 3, name: "best lap 55.900" });
  await expect(heading).toBeFocused();
  await expect(heading).toBeInViewport();
  await expect(page.getByText(missed)).toHaveCount(0);
});
