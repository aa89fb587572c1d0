import type { Page } from "@playwright/test";

export const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/**
 * Median of five laps: from Enter until the row is there and the count of laps in the figures has moved, and with a plan how far
 * its line is met, ms.
 */
export async function lapLogged(page: Page): Promise<number> {
  const field = page.getByRole("region", { name: "Entry" }).getByRole("textbox");
  const times: number[] = [];
  for (let lap = 0; lap < 5; lap++) {
    await field.fill(`1:25.${120 + lap}`);
    await page.evaluate(() => {
      const rows = () => document.querySelectorAll("tbody tr").length;
      const figures = () => [...document.querySelectorAll("dl dd")].map((cell) => cell.textContent).join("|");
      const plan = () => document.querySelector('section[aria-label="Plan"]')?.textContent;
      const before = { rows: rows(), figures: figures(), plan: plan() };
      document.addEventListener(
        "keydown",
        () => {
          const began = performance.now();
          const observer = new MutationObserver(() => {
            if (rows() === before.rows || figures() === before.figures) return;
            if (before.plan !== undefined && plan() === before.plan) return;
            observer.disconnect();
            requestAnimationFrame(() =>
              performance.measure("logged", { start: began, end: performance.now() }),
            );
          });
          observer.observe(document, { childList: true, subtree: true, characterData: true });
        },
        { capture: true, once: true },
      );
      performance.clearMeasures("logged");
    });
    await field.press("Enter");
    await page.waitForFunction(() => performance.getEntriesByName("logged").length > 0, undefined, {
      timeout: 10_000,
    });
    times.push(await page.evaluate(() => performance.getEntriesByName("logged")[0]?.duration ?? Number.NaN));
    // A hand comes back to the keys when the page has nothing more to do.
    await page.evaluate(() => new Promise<void>((done) => requestIdleCallback(() => done())));
  }
  return median(times);
}
