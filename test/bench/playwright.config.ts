import { defineConfig } from "@playwright/test";
import journeys from "../playwright.config.ts";

/** The app measured in a browser, with few laps stored and with many; ratios inside one run. */
export default defineConfig({
  ...journeys,
  testDir: ".",
  testMatch: ["app.ts", "plan.ts", "review.ts", "restore.ts"],
  outputDir: "../../node_modules/.cache/bench",
  workers: 1,
  timeout: 900_000,
  webServer: { command: "", ...[journeys.webServer].flat()[0], cwd: "../.." },
});
