import { defineConfig, devices } from "@playwright/test";
import { findBrowser } from "./support/browser.ts";

const { executablePath, env } = await findBrowser();
const port = Number(process.env["LAP_LEDGER_PORT"] ?? 4179);
const build = process.env["LAP_LEDGER_BUILD"] ?? "dist";

/**
 * The journeys of a driver, in a real Chromium, against the production build. LAP_LEDGER_PORT and LAP_LEDGER_BUILD
 * name another port and another build than `dist`, for a second run beside the first. No journey is run
 * a second time: one that fails by chance has found something.
 */
export default defineConfig({
  testDir: "journeys",
  outputDir: `../node_modules/.cache/playwright/${port}`,
  fullyParallel: true,
  workers: 2,
  timeout: 90_000,
  expect: { timeout: 10_000 },
  reporter: "list",
  use: {
    ...devices["Desktop Chrome"],
    baseURL: `http://127.0.0.1:${port}`,
    timezoneId: "Europe/Berlin",
    trace: "retain-on-failure",
    launchOptions: { executablePath, env, args: ["--no-sandbox", "--disable-gpu"] },
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --host 127.0.0.1 --port ${port} --strictPort --outDir ${build}`,
    cwd: "..",
    url: `http://127.0.0.1:${port}`,
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
