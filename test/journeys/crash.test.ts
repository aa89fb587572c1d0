import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import { crashTab, readyToCrash } from "../support/journeyFaults.ts";
import { entryField, expect, lapTime, logLaps, open, startSession, test } from "../support/journeys.ts";

declare global {
  interface Window {
    /** Says that the page takes no answer from now on. */
    tellBusy?: () => Promise<void>;
  }
}

/** A quick hand: a tenth of a second from key to key. */
const likeAHand = { delay: 100 };
const typed = ["1:25.118", "1:25.902", "1:25.340"];

test("a half-typed line and the laps outlive a reload", async ({ page }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, typed);
  await entryField(page).pressSequentially("1:26.4", likeAHand);
  await page.reload();
  await expect(entryField(page)).toHaveValue("1:26.4");
  await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:25.340");
  await entryField(page).press("Enter");
  await expect(lapTime(page, 4)).toHaveAccessibleName("Edit lap 4: 1:26.4");
});

test("a half-typed line and the laps outlive a crashed tab", async ({ page, context }) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, typed);
  await entryField(page).pressSequentially("1:26.4", likeAHand);
  await expect(page.getByText("lap 4 ·")).toBeVisible();
  await crashTab(page);
  const again = await context.newPage();
  await open(again);
  await expect(entryField(again)).toHaveValue("1:26.4");
  await expect(lapTime(again, 3)).toHaveAccessibleName("Edit lap 3: 1:25.340");
  await expect(lapTime(again, 4)).toBeHidden();
});

test("a half-typed line outlives a tab that was killed before the browser had answered any of its keys", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, typed);
  const again = await context.newPage();
  const crash = await readyToCrash(page);
  const isBusy = new Promise<void>((resolve) => void page.exposeFunction("tellBusy", resolve));
  await expect.poll(() => page.evaluate(() => typeof window.tellBusy)).toBe("function");
  // Key after key, and then busy for good: no answer of the browser reaches the page in between.
  entryField(page)
    .evaluate(async (field: HTMLInputElement) => {
      const setText = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
      for (const text of ["1", "1:", "1:2", "1:26", "1:26."]) {
        setText?.call(field, text);
        field.dispatchEvent(new InputEvent("input", { bubbles: true }));
        for (let tick = 0; tick < 100; tick += 1) await null;
      }
      void window.tellBusy?.();
      const end = Date.now() + 60_000;
      while (Date.now() < end);
    })
    .catch(() => undefined);
  await isBusy;
  await crash();
  await page.close();
  await open(again);
  await expect(entryField(again)).toHaveValue("1:26.");
});

test("a killed browser keeps every lap shown as stored, and the line", async ({ baseURL, launchOptions }) => {
  const folder = mkdtempSync(join(tmpdir(), "lap-ledger-"));
  const options = { ...launchOptions, baseURL: baseURL ?? "", locale: "en-GB" };
  try {
    const first = await chromium.launchPersistentContext(folder, options);
    const page = first.pages()[0] ?? (await first.newPage());
    await open(page);
    await startSession(page, "club hatch", "Varnholt Ring");
    await logLaps(page, typed);
    await entryField(page).pressSequentially("1:26.4", likeAHand);
    await expect(page.getByText("lap 4 ·")).toBeVisible();
    const gone = new Promise((resolve) => first.once("close", resolve));
    for (const id of processesOf(folder)) process.kill(id, "SIGKILL");
    await gone;
    for (const name of readdirSync(folder).filter((name) => name.startsWith("Singleton")))
      rmSync(join(folder, name), { force: true });

    const second = await chromium.launchPersistentContext(folder, options);
    const again = second.pages()[0] ?? (await second.newPage());
    await open(again);
    for (const [index, text] of typed.entries())
      await expect(lapTime(again, index + 1)).toHaveAccessibleName(`Edit lap ${index + 1}: ${text}`);
    await expect(entryField(again)).toHaveValue("1:26.4");
    await second.close();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

/** Processes of the browser that works in this profile folder, and of no other: Linux only, as the shipped browser. */
function processesOf(folder: string): number[] {
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .map(Number)
    .filter((id) => {
      try {
        return readFileSync(`/proc/${id}/cmdline`, "utf8").includes(`--user-data-dir=${folder}`);
      } catch {
        return false;
      }
    });
}
