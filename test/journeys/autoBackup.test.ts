import { readFile } from "node:fs/promises";
import { chromium, type Page } from "@playwright/test";
import { anotherDevice, mergeLine, saveBackup } from "../support/journeyDevices.ts";
import {
  endSession,
  expect,
  goTo,
  lapTime,
  logLaps,
  open,
  test as plain,
  startSession,
} from "../support/journeys.ts";

/** A browser with a profile of its own: one without, as in a private window, cannot read a kept folder again. */
const test = plain.extend({
  context: async ({ launchOptions, baseURL }, use, info) => {
    const options = { ...launchOptions, baseURL: baseURL ?? "", timezoneId: "Europe/Berlin" };
    const context = await chromium.launchPersistentContext(info.outputPath("profile"), options);
    await use(context);
    await context.close();
  },
});

/**
 * The browser's own private folder stands for one the driver chooses: the same kind of handle, kept and written in the
 * same way. What it answers when asked for leave is set by the test, kept over a reload.
 */
const withFolder = (page: Page) =>
  page.addInitScript(() => {
    Object.assign(window, {
      showDirectoryPicker: async () => {
        const root = await navigator.storage.getDirectory();
        return root.getDirectoryHandle("Backups", { create: true });
      },
    });
    const handles = FileSystemHandle.prototype as unknown as Record<string, () => Promise<string>>;
    handles["queryPermission"] = async () => localStorage.getItem("leave") ?? "granted";
    handles["requestPermission"] = async () => {
      localStorage.removeItem("leave");
      return "granted";
    };
  });

const filesIn = (page: Page) =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle("Backups", { create: true });
    const names: string[] = [];
    for await (const name of folder.keys()) names.push(name);
    return names.sort();
  });

const part = (page: Page) => page.getByRole("region", { name: "Automatic backup" });

async function chosen(page: Page): Promise<void> {
  await withFolder(page);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.930"]);
  await goTo(page, "Data");
  await part(page).getByRole("button", { name: "Choose a folder" }).click();
  await expect(part(page).getByText(/The last good one/)).toBeVisible();
}

test("after each session a dated file goes into the folder, whole and readable", async ({ page }) => {
  await chosen(page);
  expect(await filesIn(page)).toHaveLength(1);
  await goTo(page, "Log");
  await logLaps(page, ["1:24.661"]);
  await endSession(page);
  await expect.poll(() => filesIn(page), { timeout: 20_000 }).toHaveLength(2);
  const newest = (await filesIn(page)).at(-1) ?? "";
  expect(newest).toMatch(/-[0-9a-f]{4}-\d{4}-\d\d-\d\dT\d{6}Z\.json\.gz$/);
  const backup = await page.evaluate(async (name) => {
    const root = await navigator.storage.getDirectory();
    const file = await (await (await root.getDirectoryHandle("Backups")).getFileHandle(name)).getFile();
    return new Response(file.stream().pipeThrough(new DecompressionStream("gzip"))).json();
  }, newest);
  expect(backup.counts).toMatchObject({ sessions: 1, runs: 1 });
  expect(backup.tables.runs[0].laps).toHaveLength(3);
  await goTo(page, "Data");
  await expect(page.getByText(/Last backup .*, today: no lap since\./)).toBeVisible();
});

test("when the leave has gone it says so above every page, and one click allows it again", async ({
  page,
}) => {
  await chosen(page);
  await goTo(page, "Log");
  await endSession(page);
  await expect.poll(() => filesIn(page), { timeout: 20_000 }).toHaveLength(2);
  await page.evaluate(() => localStorage.setItem("leave", "prompt"));
  await page.reload();
  await expect(page.getByRole("link", { name: "automatic backup has stopped" })).toBeVisible();
  const notice = page.getByText(/Automatic backup has stopped: .*The last good one is of/);
  await expect(notice).toBeVisible();
  await goTo(page, "Data");
  await expect(part(page).getByText(/Automatic backup has stopped/)).toBeVisible();
  await expect(part(page).getByText(/The last good one: /)).toBeVisible();
  await goTo(page, "Review");
  await page.getByRole("button", { name: "Allow again" }).click();
  await expect(notice).toBeHidden();
  await expect.poll(() => filesIn(page), { timeout: 20_000 }).toHaveLength(3);
  await expect(page.getByText(/last backup today/)).toBeVisible();
});

test("what another device left in the folder is offered at opening and merged on Data", async ({
  page,
  browser,
  baseURL,
}) => {
  await chosen(page);
  await goTo(page, "Log");
  await endSession(page);
  // The other device writes into the same folder, which a drive keeps in step.
  const pc = await anotherDevice(browser, baseURL);
  await startSession(pc, "endurance trainer", "Tessemoor");
  await logLaps(pc, ["59.120"]);
  await goTo(pc, "Data");
  const text = await readFile(await saveBackup(pc), "utf8");
  await page.evaluate(async (content) => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle("Backups");
    const file = await folder.getFileHandle("Evenings-zzzz-2026-11-25T170500Z.json", { create: true });
    const stream = await file.createWritable();
    await stream.write(content);
    await stream.close();
  }, text);

  await page.reload();
  await page.getByText(/Another device has backed up into the folder/).waitFor();
  await page.getByRole("button", { name: "Look at it" }).click();
  await part(page).getByRole("button", { name: "Look into the folder" }).click();
  await part(page).getByRole("button", { name: "Look at it" }).click();
  await expect(mergeLine(page, "sessions")).toHaveText(/^sessions11$/);
  await part(page).getByRole("button", { name: "Merge into the open logbook" }).click();
  await expect(page.getByText(/rows added or changed/).first()).toBeVisible();
  await expect(part(page).getByText(/looked at before/)).toBeVisible();
  await goTo(page, "Log");
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 59.120");
  await page.reload();
  await expect(lapTime(page, 1)).toBeVisible();
  await expect(page.getByText(/Another device has backed up/)).toBeHidden();
});
