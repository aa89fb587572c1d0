import { rmSync } from "node:fs";
import { type Page, test } from "@playwright/test";
import { filled, launch } from "./filled.ts";
import { lapLogged, median } from "./lapLogged.ts";

const rounds = 5;
const sizes = [100, 100_000];

/** Cold open and lap logged, each with 100 and with 100,000 laps stored, in one run. Printed, never asserted. */
test("the app with few laps and with many", async ({ baseURL }) => {
  const address = baseURL ?? "";
  const folders = new Map<number, string>();
  for (const laps of sizes) folders.set(laps, await filled(laps, address));
  const opened = new Map<number, number[]>(sizes.map((laps) => [laps, []]));
  const logged = new Map<number, number[]>(sizes.map((laps) => [laps, []]));
  for (let round = 0; round < rounds; round++)
    for (const laps of sizes) {
      const context = await launch(folders.get(laps) ?? "");
      const page = await context.newPage();
      opened.get(laps)?.push(await coldOpen(page, address));
      logged.get(laps)?.push(await lapLogged(page));
      await context.close();
    }
  print("cold open: address to the open session's figures", opened);
  print("lap logged: Enter to its row and all figures", logged);
  for (const folder of folders.values()) rmSync(folder, { recursive: true, force: true });
});

function print(what: string, times: ReadonlyMap<number, readonly number[]>) {
  const [few = 0, many = 0] = sizes.map((laps) => median(times.get(laps) ?? []));
  const ratio = (many / few).toFixed(2);
  process.stdout.write(
    `${what}: ${few.toFixed(0)} ms with 100 laps, ${many.toFixed(0)} ms with 100,000, ratio ${ratio}\n`,
  );
}

/** From the start of the navigation until the figures of the open session stand on the page, ms. */
async function coldOpen(page: Page, address: string): Promise<number> {
  await page.addInitScript(() => {
    const seen = () =>
      document.querySelector("dl dd") !== null && document.querySelector("tbody tr") !== null;
    const observer = new MutationObserver(() => {
      if (!seen()) return;
      observer.disconnect();
      requestAnimationFrame(() => performance.mark("figures"));
    });
    observer.observe(document, { childList: true, subtree: true });
  });
  await page.goto(`${address}/#/log`);
  await page.waitForFunction(() => performance.getEntriesByName("figures").length > 0);
  return page.evaluate(() => performance.getEntriesByName("figures")[0]?.startTime ?? Number.NaN);
}
