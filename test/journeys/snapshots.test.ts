import type { Page } from "@playwright/test";
import { chooseFile, saveBackup } from "../support/journeyDevices.ts";
import { endSession, expect, goTo, lapTime, logLaps, open, startSession, test } from "../support/journeys.ts";

/** From Log to the one session there is. */
async function toSession(page: Page): Promise<void> {
  await goTo(page, "Log");
  await page.getByRole("table", { name: "Last sessions" }).getByRole("link").first().click();
}

test("the state after a session is kept, and comes back as a logbook of its own or in the place of the open one", async ({
  page,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.930"]);
  await endSession(page, "brake later");
  await goTo(page, "Data");
  const states = page.getByRole("region", { name: "Earlier states" });
  await expect(states.getByText(/after a session · 1 session, 2 laps/)).toBeVisible({ timeout: 20_000 });

  // Driven on; then the earlier state takes the place of the logbook.
  await toSession(page);
  await page.getByRole("button", { name: /^Go on with (run|this)/ }).click();
  await logLaps(page, ["1:24.400"]);
  await goTo(page, "Data");
  await states.getByRole("button", { name: "Look at it" }).first().click();
  await states.getByRole("radio", { name: "replace" }).check();
  await states.getByRole("button", { name: "Replace the open logbook" }).click();
  await expect(page.getByText(/is replaced/).first()).toBeVisible();
  await expect(page.getByText("1 in this browser")).toBeVisible();
  await page.getByRole("button", { name: "Close", exact: true }).click();
  await expect(states.getByText(/before it was replaced · 1 session, 3 laps/)).toBeVisible();
  await toSession(page);
  await expect(lapTime(page, 2)).toBeVisible();
  await expect(lapTime(page, 3)).toHaveCount(0);

  // And the one before is taken back.
  await goTo(page, "Data");
  const before = states.getByRole("listitem").filter({ hasText: "before it was replaced" });
  await before.getByRole("button", { name: "Look at it" }).first().click();
  await states.getByRole("radio", { name: "replace" }).check();
  await states.getByRole("button", { name: "Replace the open logbook" }).click();
  await expect(states.getByText(/before it was replaced · 1 session, 2 laps/)).toBeVisible();
  await expect(page.getByText(/is replaced/).first()).toBeVisible();
  await goTo(page, "Log");
  await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:24.400");
  // The list of logbooks and the one logbook: nothing replaced lies about.
  await expect.poll(() => page.evaluate(async () => (await indexedDB.databases()).length)).toBe(2);
});

test("a half-typed line is still there when its logbook is replaced by a state that has the session", async ({
  page,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118"]);
  await goTo(page, "Data");
  const file = await saveBackup(page);
  await goTo(page, "Log");
  await page.getByRole("region", { name: "Entry" }).getByRole("textbox").pressSequentially("1:24.9");
  await goTo(page, "Data");
  await chooseFile(page, "Choose a backup file", file);
  await page.getByRole("radio", { name: "replace" }).check();
  await page.getByRole("button", { name: "Replace the open logbook" }).click();
  await expect(page.getByText(/is replaced/).first()).toBeVisible();
  await goTo(page, "Log");
  await expect(page.getByRole("region", { name: "Entry" }).getByRole("textbox")).toHaveValue("1:24.9");
});
