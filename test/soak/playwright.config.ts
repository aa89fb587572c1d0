import { defineConfig } from "@playwright/test";
import journeys from "../playwright.config.ts";

/**
 * Thousands of changes and hundreds of killed tabs in a real browser; LAP_LEDGER_SEED names another driver,
 * LAP_LEDGER_CHANGES and LAP_LEDGER_KILLS another length.
 */
export default defineConfig({
  ...journeys,
  testDir: ".",
  outputDir: `../../node_modules/.cache/soak/${process.env["LAP_LEDGER_PORT"] ?? ""}`,
  workers: 1,
  timeout: 3_600_000,
  // A trace of an hour fills the disk; the seed gives the same driver again.
  use: { ...journeys.use, trace: "off" },
  webServer: { command: "", ...[journeys.webServer].flat()[0], cwd: "../.." },
});
