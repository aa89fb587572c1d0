import type { Page } from "@playwright/test";
import { expect, goTo, logLap, open, startSession, test } from "../support/journeys.ts";

/** Ways in which a browser keeps a page from storing anything. */
const refusals: Readonly<Record<string, () => void>> = {
  "there is no database": () =>
    Object.defineProperty(window, "indexedDB", { configurable: true, value: undefined }),
  "opening one is denied": () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("denied", "SecurityError");
    };
  },
  "even naming it is denied": () =>
    Object.defineProperty(window, "indexedDB", {
      configurable: true,
      get: () => {
        throw new DOMException("denied", "SecurityError");
      },
    }),
};

for (const [what, refuse] of Object.entries(refusals))
  test(`the driver sees what to change when ${what}`, async ({ page, expected }) => {
    expected.push(/denied/);
    await page.addInitScript(refuse);
    await page.goto("./");
    await expect(page.getByRole("heading", { name: "Lap Ledger cannot open your logbook" })).toBeVisible();
    await expect(page.getByRole("alert").first()).toContainText(
      /Allow site data for this address, then reload|A current version of it does; private windows may not/,
    );
    await expect(page.getByRole("textbox")).toHaveCount(0);
    await expect(page.getByRole("button", { name: "Reload" })).toBeVisible();
  });

test("the driver's laps are stored where only the choices of the device cannot be, and Data says so", async ({
  page,
}) => {
  await page.addInitScript(() =>
    Object.defineProperty(window, "localStorage", {
      get: () => {
        throw new DOMException("denied", "SecurityError");
      },
    }),
  );
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  await goTo(page, "Data");
  await page.getByRole("button", { name: /^Theme, pad, decimals/ }).click();
  await expect(page.getByText("This browser lets the page keep no choices")).toBeVisible();
});

const saysKept = {
  kept: "This browser has promised to keep the data",
  "not kept": "This browser has not promised to keep anything",
  unknown: "This browser does not say whether it keeps the data",
};

async function answer(page: Page, persisted: boolean | undefined) {
  await page.addInitScript((kept) => {
    const asked: string[] = [];
    Object.assign(window, { asked });
    const storage =
      kept === undefined
        ? undefined
        : {
            persisted: async () => kept,
            persist: async () => {
              asked.push("persist");
              return kept;
            },
            estimate: async () => ({ usage: 12_300_000, quota: 1e13 }),
          };
    Object.defineProperty(navigator, "storage", { configurable: true, value: storage });
  }, persisted);
}

for (const [persisted, says] of [
  [true, saysKept.kept],
  [false, saysKept["not kept"]],
  [undefined, saysKept.unknown],
] as const)
  test(`the driver sees on Data: ${says}`, async ({ page }) => {
    await answer(page, persisted);
    await open(page);
    const asked = () => page.evaluate(() => (window as unknown as { asked: string[] }).asked);
    expect(await asked()).toEqual([]);
    await goTo(page, "Data");
    await expect(page.getByText(says)).toBeVisible();
    for (const other of Object.values(saysKept).filter((text) => text !== says))
      await expect(page.getByText(other)).toHaveCount(0);
    if (persisted !== undefined) await expect(page.getByText("about 12.3 MB")).toBeVisible();
    await expect(page.getByText(/10 ?TB|quota/i)).toHaveCount(0);
    await expect(page.getByRole("button", { name: "Save a backup" })).toBeVisible();
    await goTo(page, "Log");
    await startSession(page, "club hatch", "Varnholt Ring");
    await logLap(page, "1:25.118");
    await logLap(page, "1:25.300");
    await expect.poll(async () => (await asked()).length).toBeLessThanOrEqual(1);
  });
