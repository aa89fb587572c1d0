import { defineConfig } from "@playwright/test";
import journeys from "../playwright.config.ts";

/** Thousands of changes in a real browser; LAP_LEDGER_SEED and LAP_LEDGER_CHANGES name another driver and length. */
export default defineConfig({
  ...journeys,
  testDir: ".",
  outputDir: "../../node_modules/.cache/soak",
  workers: 1,
  timeout: 1_800_000,
  webServer: { command: "", ...[journeys.webServer].flat()[0], cwd: "../.." },
});
