import { readFile } from "node:fs/promises";
import { type Browser, expect, type Page } from "@playwright/test";
import { goTo } from "./journeys.ts";

/** A second device: a browser of its own, with nothing in it but the app's address. */
export async function anotherDevice(browser: Browser, baseURL: string | undefined): Promise<Page> {
  const context = await browser.newContext({
    ...(baseURL !== undefined && { baseURL }),
    acceptDownloads: true,
  });
  const page = await context.newPage();
  await page.goto("./");
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  return page;
}

/** Saves a backup on Data; gives the place of the file. */
export async function saveBackup(page: Page): Promise<string> {
  const handed = page.waitForEvent("download");
  await page
    .getByRole("region", { name: "Backup", exact: true })
    .getByRole("button", { name: "Save a backup" })
    .click();
  return (await handed).path();
}

/** The rows of a device that a driver would miss, by its own backup: tables as in the file. */
export async function rowsOf(page: Page): Promise<Readonly<Record<string, unknown>>> {
  await goTo(page, "Data");
  const file = JSON.parse(await readFile(await saveBackup(page), "utf8")) as {
    tables: Record<string, unknown>;
  };
  return file.tables;
}

/** Chooses a file by a button that opens the file dialog. */
export async function chooseFile(page: Page, button: string | RegExp, file: string): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: button }).click();
  await (await chooser).setFiles(file);
}

/** One line of the table of what a merge would change. */
export const mergeLine = (page: Page, what: string) =>
  page
    .getByRole("table", { name: "What the merge would change" })
    .getByRole("row", { name: new RegExp(`^${what} `) });
