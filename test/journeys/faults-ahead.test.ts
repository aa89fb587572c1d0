import { chromium, type Page } from "@playwright/test";
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

const stoodIn2036 = "This device’s clock stood at Tue 4 Mar 2036";

test("the driver whose clock stood in 2036 for one session is told once, and all goes on as before", async ({
  page,
}) => {
  await withFolder(page);
  await page.clock.install({ time: new Date("2036-03-04T18:00:00Z") });
  await open(page);
  await goTo(page, "Data");
  await page.getByRole("button", { name: "Choose a folder" }).click();
  await expect(page.getByText("After each session a dated file goes into")).toBeVisible();
  await goTo(page, "Log");
  await startSession(page, "club hatch", "Marlow Fen");
  await logLaps(page, ["1:25.118", "1:24.930", "1:25.300", "1:25.010", "1:25.220"]);
  await endSession(page, "note of 2036");
  await page.clock.runFor(5000);
  await expect.poll(() => filesIn(page)).toHaveLength(1);

  // The clock is set right.
  await page.clock.setSystemTime(new Date("2026-11-28T18:00:00Z"));
  await page.reload();
  await expect(page.getByText(`${stoodIn2036} when the logbook was last open`).last()).toBeVisible();
  await expect(page.getByText("last backup: the clock stood ahead then")).toBeVisible();
  await page.reload();
  await expect(page.getByText("last backup: the clock stood ahead then")).toBeVisible();
  await expect(page.getByText(stoodIn2036)).toHaveCount(0);

  // The session of 2036 asks about its date; the next one is the last one.
  await expect(page.getByText("This session is dated Tue 4 Mar 2036, after tomorrow.")).toBeVisible();
  await page.getByRole("button", { name: "Back to Log" }).click();
  await expect(page.getByText("1 session dated after tomorrow is left out:")).toBeVisible();
  await startSession(page, "club hatch", "Marlow Fen");
  await logLaps(page, ["1:25.118", "1:24.900", "1:25.200", "1:25.000", "1:25.250"]);
  await endSession(page, "note of today");
  await page.clock.runFor(5000);
  await expect.poll(() => filesIn(page)).toHaveLength(2);
  await expect.poll(() => statesKept(page)).toBe(2);
  await expect(page.getByText("last backup today")).toBeVisible();
  await expect(page.getByText("2026-11-28T").first()).toBeVisible();
  await goTo(page, "Log");
  await page.getByRole("button", { name: "Back to Log" }).click();
  await expect(page.getByText("note of today")).toBeVisible();
  await expect(page.getByText("note of 2036")).toHaveCount(0);

  // Review ends today, and says what it leaves out.
  await goTo(page, "Review");
  await expect(page.getByText("1 session dated after tomorrow is left out:")).toBeVisible();
  await page.getByRole("link", { name: "all", exact: true }).click();
  const list = page.getByRole("table", { name: "Sessions, newest first" });
  await expect(list.getByRole("link")).toHaveText(["Sat 28 Nov 2026"]);
  await expect(page.locator("svg").getByText("2036")).toHaveCount(0);

  // Put right, it counts.
  await page.getByRole("link", { name: "Tue 4 Mar 2036" }).click();
  await page.getByRole("button", { name: "Change date" }).click();
  const dialog = page.getByRole("dialog", { name: "Date of this session" });
  await dialog.getByLabel("Date", { exact: true }).fill("2026-11-27");
  await dialog.getByRole("button", { name: "Done" }).click();
  await expect(page.getByText("after tomorrow")).toHaveCount(0);
  await goTo(page, "Review");
  await page.getByRole("link", { name: "all", exact: true }).click();
  await expect(list.getByRole("link")).toHaveText(["Sat 28 Nov 2026", "Fri 27 Nov 2026"]);
  expect(await storedRows(page, "sessions")).toHaveLength(2);
});
