import { defineConfig, devices } from "@playwright/test";
import { findBrowser } from "./support/browser.ts";

const { executablePath, env } = await findBrowser();
const port = 4179;

/** The journeys of a driver, in a real Chromium, against the production build. */
export default defineConfig({
  testDir: "journeys",
  outputDir: "../node_modules/.cache/playwright",
  fullyParallel: true,
  workers: 2,
  timeout: 60_000,
  reporter: "list",
  use: {
    ...devices["Desktop Chrome"],
    baseURL: `http://127.0.0.1:${port}`,
    timezoneId: "Europe/Berlin",
    trace: "retain-on-failure",
    launchOptions: { executablePath, env, args: ["--no-sandbox", "--disable-gpu"] },
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --host 127.0.0.1 --port ${port} --strictPort`,
    cwd: "..",
    url: `http://127.0.0.1:${port}`,
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
