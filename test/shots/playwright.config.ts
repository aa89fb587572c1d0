import { defineConfig } from "@playwright/test";
import journeys from "../playwright.config.ts";

/** Photographs instead of checks, against the same build. */
export default defineConfig({
  ...journeys,
  testDir: ".",
  testMatch: "shots.ts",
  outputDir: "../../node_modules/.cache/shots",
  timeout: 180_000,
  webServer: { command: "", ...[journeys.webServer].flat()[0], cwd: "../.." },
});
