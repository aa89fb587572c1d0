import { rmSync } from "node:fs";
import { type Page, test } from "@playwright/test";
import { filled, launch } from "./filled.ts";

const rounds = 3;
const sizes = [100, 5000, 100_000];
const stages = ["figures", "first chart", "questions"] as const;
type Stage = (typeof stages)[number];
const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/**
 * Review from the click on the place until its last chart is drawn, over all time, with 100, 5,000 and
 * 100,000 laps of one combo; how long each stage takes. Printed, never asserted.
 */
test("Review with few laps and with many", async ({ baseURL }) => {
  const address = baseURL ?? "";
  for (const laps of sizes) {
    const folder = await filled(laps, address);
    const context = await launch(folder);
    const page = await context.newPage();
    const times = new Map<Stage, number[]>(stages.map((stage) => [stage, []]));
    for (let round = 0; round < rounds; round++)
      for (const [stage, ms] of await reviewDrawn(page, address)) times.get(stage)?.push(ms);
    const all = stages.map((stage) => median(times.get(stage) ?? []));
    const whole = all.reduce((sum, ms) => sum + ms, 0);
    const shares = stages.map((stage, at) => {
      const ms = all[at] ?? 0;
      return `${stage} ${ms.toFixed(0)} (${Math.round((100 * ms) / whole)} %)`;
    });
    process.stdout.write(`Review, ${laps} laps: ${whole.toFixed(0)} ms; ${shares.join(", ")}\n`);
    await context.close();
    rmSync(folder, { recursive: true, force: true });
  }
});

/**
 * From the click on Review to the first finding (figures read and worked out), from there to its chart, and from the
 * press that opens the last question to the last chart, ms. The page is loaded anew each time, so charts are fetched.
 */
async function reviewDrawn(page: Page, address: string): Promise<[Stage, number][]> {
  await page.goto(`${address}/#/targets`);
  await page.reload();
  await page.getByRole("heading", { level: 1 }).waitFor();
  return page.evaluate(async () => {
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
    window.location.hash = "#/review?period=all";
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
  });
}
