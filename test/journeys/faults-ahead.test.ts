import { chromium, type Page } from "@playwright/test";
import { addDays, practiceDay, sayDate } from "#domain";
import { storedRows } from "../support/journeyDatabase.ts";
import { endSession, expect, goTo, logLaps, open, test as plain, startSession } from "../support/journeys.ts";

/** A browser with a profile of its own: one without, as in a private window, cannot read a kept folder again. */
const test = plain.extend({
  context: async ({ launchOptions, baseURL }, use, info) => {
    const options = { ...launchOptions, baseURL: baseURL ?? "", timezoneId: "Europe/Berlin" };
    const context = await chromium.launchPersistentContext(info.outputPath("profile"), options);
    await use(context);
    await context.close();
  },
});

/** The browser's own private folder stands for one the driver chooses. */
const withFolder = (page: Page) =>
  page.addInitScript(() => {
    Object.assign(window, {
      showDirectoryPicker: async () => {
        const root = await navigator.storage.getDirectory();
        return root.getDirectoryHandle("Backups", { create: true });
      },
    });
    const handles = FileSystemHandle.prototype as unknown as Record<string, () => Promise<string>>;
    for (const asked of ["queryPermission", "requestPermission"]) handles[asked] = async () => "granted";
  });

const filesIn = (page: Page) =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle("Backups", { create: true });
    const names: string[] = [];
    for await (const name of folder.keys()) names.push(name);
    return names.sort();
  });

/** How many states have been kept after sessions. */
async function statesKept(page: Page): Promise<number> {
  await goTo(page, "Data");
  const part = page.getByRole("region", { name: "Earlier states" });
  return part.getByText("after a session").count();
}

/**
 * A test sets the clock of pages only, workers keep the machine's: so the clock that is right is the machine's, and what
 * the worker noted while the page's stood ahead is dated ahead by hand.
 */
const now = Date.now();
const ahead = now + 3400 * 86_400_000;
const zone = "Europe/Berlin";
const today = practiceDay(now, zone, 4);
const day = sayDate(practiceDay(ahead, zone, 4));
const stoodAhead = `This device’s clock stood at ${sayDate(practiceDay(ahead, zone, 0))}`;

async function dateAhead(page: Page): Promise<void> {
  await page.evaluate(
    (at) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("lap-ledger");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const writing = opening.result.transaction(["kept", "logbooks", "folders"], "readwrite");
          for (const [table, field] of [
            ["kept", "madeAt"],
            ["logbooks", "lastBackupAt"],
            ["folders", "lastGoodAt"],
          ] as const) {
            const walk = writing.objectStore(table).openCursor();
            walk.onsuccess = () => {
              if (walk.result === null) return;
              walk.result.update({ ...walk.result.value, [field]: at });
              walk.result.continue();
            };
          }
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    ahead,
  );
}

test("the driver whose clock stood ten years ahead for one session is told once, and all goes on as before", async ({
  page,
}) => {
  await withFolder(page);
  await page.clock.install({ time: ahead });
  await open(page);
  await goTo(page, "Data");
  await page.getByRole("button", { name: "Choose a folder" }).click();
  await expect(page.getByText("After each session a dated file goes into")).toBeVisible();
  await goTo(page, "Log");
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.930", "1:25.300", "1:25.010", "1:25.220"]);
  await endSession(page, "note of then");
  await page.clock.runFor(5000);
  await expect.poll(() => filesIn(page)).toHaveLength(1);
  await expect.poll(() => statesKept(page)).toBe(1);
  await goTo(page, "Log");
  await dateAhead(page);

  // The clock is set right.
  await page.clock.setSystemTime(now);
  await page.reload();
  await expect(page.getByText(`${stoodAhead} when the logbook was last open`).last()).toBeVisible();
  await expect(page.getByText("last backup: the clock stood ahead then")).toBeVisible();
  await page.reload();
  await expect(page.getByText("last backup: the clock stood ahead then")).toBeVisible();
  await expect(page.getByText(stoodAhead)).toHaveCount(0);

  // That session asks about its date; the next one is the last one.
  await expect(page.getByText("1 session dated after tomorrow is left out:")).toBeVisible();
  await page.getByRole("link", { name: day }).click();
  await expect(page.getByText(`This session is dated ${day}, after tomorrow.`)).toBeVisible();
  await page.getByRole("button", { name: "Back to Log" }).click();
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.900", "1:25.200", "1:25.000", "1:25.250"]);
  // A page that took long to come here has rested before, and kept what was put right.
  await expect.poll(() => statesKept(page)).toBeGreaterThan(0);
  const before = await statesKept(page);
  await goTo(page, "Log");
  await endSession(page, "note of today");
  await page.clock.runFor(5000);
  await expect.poll(() => filesIn(page)).toHaveLength(2);
  await expect.poll(() => statesKept(page)).toBe(before + 1);
  await goTo(page, "Log");
  await expect(page.getByText("last backup today")).toBeVisible();
  await expect(page.getByText("note of today")).toBeVisible();
  await expect(page.getByText("note of then")).toHaveCount(0);

  // Review ends today, and says what it leaves out.
  await goTo(page, "Review");
  await expect(page.getByText("1 session dated after tomorrow is left out:")).toBeVisible();
  await page.getByRole("link", { name: "all", exact: true }).click();
  const list = page.getByRole("table", { name: "Sessions, newest first" });
  await expect(list.getByRole("link")).toHaveText([sayDate(today)]);
  await expect(page.locator("svg").getByText(day.slice(-4))).toHaveCount(0);

  // Put right, it counts.
  await page.getByRole("link", { name: day }).click();
  await page.getByRole("button", { name: "Change date" }).click();
  const dialog = page.getByRole("dialog", { name: "Date of this session" });
  await dialog.getByLabel("Date", { exact: true }).fill(addDays(today, -1));
  await dialog.getByRole("button", { name: "Done" }).click();
  await expect(page.getByText("after tomorrow")).toHaveCount(0);
  await goTo(page, "Review");
  await page.getByRole("link", { name: "all", exact: true }).click();
  await expect(list.getByRole("link")).toHaveText([sayDate(today), sayDate(addDays(today, -1))]);
  expect(await storedRows(page, "sessions")).toHaveLength(2);
});
