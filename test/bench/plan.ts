import { rmSync } from "node:fs";
import { test } from "@playwright/test";
import { filled, launch } from "./filled.ts";
import { lapLogged, median } from "./lapLogged.ts";

const rounds = 7;
const sizes = [100, 5000];

/** A lap logged with a plan that runs and targets that stand, and without: in turns, in one run. Printed, never asserted. */
test("a lap with a plan and targets, and without", async ({ baseURL }) => {
  const address = baseURL ?? "";
  for (const laps of sizes) {
    const ways = [false, true].map((isPlanned) => ({ isPlanned, times: [] as number[], folder: "" }));
    for (const way of ways) way.folder = await filled(laps, address, way.isPlanned);
    for (let round = 0; round < rounds; round++)
      // What comes second finds a warmer machine: each begins every other time.
      for (const way of round % 2 === 0 ? ways : ways.toReversed()) {
        const context = await launch(way.folder);
        const page = await context.newPage();
        await page.goto(`${address}/#/log`);
        await page.locator("dl dd").first().waitFor();
        if (way.isPlanned) await page.getByRole("region", { name: "Plan" }).waitFor();
        way.times.push(await lapLogged(page));
        await context.close();
      }
    const [without = 0, planned = 0] = ways.map(({ times }) => median(times));
    process.stdout.write(
      `lap logged, ${laps} laps: ${without.toFixed(0)} ms without plan and targets, ${planned.toFixed(0)} ms with them, ratio ${(planned / without).toFixed(2)}\n`,
    );
    for (const { folder } of ways) rmSync(folder, { recursive: true, force: true });
  }
});
