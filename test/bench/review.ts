import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page, test } from "@playwright/test";
import { findBrowser } from "../support/browser.ts";
import { backupWithLaps } from "./manyLaps.ts";

const rounds = 3;
const sizes = [100, 5000, 100_000];
const stages = ["figures", "first chart", "questions"] as const;
type Stage = (typeof stages)[number];
const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/**
 * Review from the click on the place until its last chart is drawn, over a year and over all time, with 100, 5,000 and
 * 100,000 laps of one combo; how long each stage takes. Printed, never asserted.
 */
test("Review with few laps and with many", async ({ baseURL }) => {
  const address = baseURL ?? "";
  for (const laps of sizes) {
    const folder = await filled(laps, address);
    const context = await launch(folder);
    const page = await context.newPage();
    for (const period of ["year", "all"]) {
      const times = new Map<Stage, number[]>(stages.map((stage) => [stage, []]));
      for (let round = 0; round < rounds; round++)
        for (const [stage, ms] of await reviewDrawn(page, address, period)) times.get(stage)?.push(ms);
      const all = stages.map((stage) => median(times.get(stage) ?? []));
      const whole = all.reduce((sum, ms) => sum + ms, 0);
      const shares = stages.map(
        (stage, at) =>
          `${stage} ${(all[at] ?? 0).toFixed(0)} (${Math.round((100 * (all[at] ?? 0)) / whole)} %)`,
      );
      process.stdout.write(`Review, ${laps} laps, ${period}: ${whole.toFixed(0)} ms; ${shares.join(", ")}\n`);
    }
    await context.close();
    rmSync(folder, { recursive: true, force: true });
  }
});

/**
 * From the click on Review to the first finding (figures read and worked out), from there to its chart, and from the
 * press that opens the last question to the last chart, ms. The page is loaded anew each time, so charts are fetched.
 */
async function reviewDrawn(page: Page, address: string, period: string): Promise<[Stage, number][]> {
  await page.goto(`${address}/#/targets`);
  await page.reload();
  await page.getByRole("heading", { level: 1 }).waitFor();
  return page.evaluate(async (kind) => {
    const drawn = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    const until = async (holds: () => boolean) => {
      while (!holds()) await drawn();
      await drawn();
    };
    const charts = () => document.querySelectorAll('[role="figure"] svg').length;
    const folded = () => [
      ...document.querySelectorAll<HTMLButtonElement>('h2 button[aria-expanded="false"]'),
    ];
    const begin = performance.now();
    window.location.hash = `#/review?period=${kind}`;
    await until(() => folded().length > 0);
    const figures = performance.now();
    await until(() => charts() > 0);
    const chart = performance.now();
    const press = performance.now();
    for (const button of folded()) button.click();
    const isWaiting = () => /Drawing|Reading the laps/.test(document.body.textContent ?? "");
    await until(() => charts() >= 4 && !isWaiting());
    return [
      ["figures", figures - begin],
      ["first chart", chart - figures],
      ["questions", performance.now() - press],
    ] as [Stage, number][];
  }, period);
}

async function launch(folder: string): Promise<BrowserContext> {
  const { executablePath, env } = await findBrowser();
  return chromium.launchPersistentContext(folder, {
    executablePath,
    env,
    args: ["--no-sandbox", "--disable-gpu"],
    viewport: { width: 1280, height: 800 },
  });
}

/** A browser profile that holds a logbook of so many laps, restored from a backup by the app itself. */
async function filled(laps: number, address: string): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "lap-ledger-"));
  const file = join(folder, "backup.json");
  writeFileSync(file, await backupWithLaps(laps));
  const context = await launch(folder);
  const page = await context.newPage();
  await page.goto(`${address}/#/data`);
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Choose a backup file" }).click();
  await (await chooser).setFiles(file);
  await page
    .getByRole("button", { name: /Restore/ })
    .last()
    .click({ timeout: 300_000 });
  await page.getByText(`${laps} laps” is open`).first().waitFor({ timeout: 300_000 });
  await page.goto(`${address}/#/review?period=all`);
  await page.getByRole("figure").first().waitFor({ timeout: 300_000 });
  await page.waitForTimeout(3000); // figures of all sessions are kept in a moment of rest
  await context.close();
  return folder;
}
