import { rmSync } from "node:fs";
import { holdOpen, letGo, logbooksThere, savedBackup, storedRows } from "../support/journeyDatabase.ts";
import { buildFolder, type Served, serve } from "../support/journeyServer.ts";
import { entryField, expect, lapTime, logLap, startSession, test } from "../support/journeys.ts";
import { buildWithNextSchema } from "../support/nextSchema.ts";

// The worker would go on serving the build it has kept; here the server alone decides which one is opened.
test.use({ baseURL: "", serviceWorkers: "block" });
test.describe.configure({ mode: "serial" });

let next: string;
let failing: Readonly<Record<"failsAtRows" | "failsAsAWhole" | "failsAtImport", string>>;
let served: Served;
test.beforeAll(async () => {
  next = await buildWithNextSchema("works");
  failing = {
    failsAtRows: await buildWithNextSchema("failsAtRows"),
    failsAsAWhole: await buildWithNextSchema("failsAsAWhole"),
    failsAtImport: await buildWithNextSchema("failsAtImport"),
  };
});
test.afterAll(() => {
  for (const folder of [next, ...Object.values(failing)]) rmSync(folder, { recursive: true, force: true });
});
test.beforeEach(async ({ page }) => {
  served = await serve(buildFolder, "/");
  await page.goto(served.url);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
});
test.afterEach(() => served.close());

test("the driver sees which tab to close when it holds up an upgrade, and the page goes on by itself", async ({
  page,
  context,
}) => {
  await holdOpen(page);
  served.swap(next);
  const newer = await context.newPage();
  await newer.goto(served.url);
  await expect(
    newer.getByText("Another tab of Lap Ledger is open in an older version. Close it"),
  ).toBeVisible();
  await letGo(page);
  await expect(lapTime(newer, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
  expect(await storedRows(newer, "cars")).toMatchObject([{ name: "club hatch", wheels: 4 }]);
  await logLap(newer, "1:25.300");
});

test("the driver keeps a half-typed line when another tab upgrades, and old code writes no more", async ({
  page,
  context,
}) => {
  await entryField(page).pressSequentially("1:25.4", { delay: 60 });
  served.swap(next);
  const newer = await context.newPage();
  await newer.goto(served.url);
  await expect(lapTime(newer, 1)).toBeVisible();
  await expect(page.getByRole("alert").filter({ hasText: "was updated in another tab" })).toBeVisible();
  await expect(entryField(page)).toHaveValue("1:25.4");
  await entryField(page).press("Enter");
  await expect(page.getByRole("alert").filter({ hasText: "Not stored: 1:25.4" })).toBeVisible();
  expect(await storedRows(newer, "runs")).toMatchObject([{ laps: [{ ms: 85_118 }] }]);
  await page.getByRole("button", { name: "Reload" }).click();
  await expect(lapTime(page, 2)).toHaveAccessibleName("Edit lap 2: 1:25.4");
  await expect(lapTime(newer, 2)).toBeVisible();
  await expect(lapTime(page, 3)).toBeHidden();
});

test("the driver sees that a newer version wrote the logbook, and can back it up but not write", async ({
  page,
}) => {
  served.swap(next);
  await page.goto(served.url);
  await expect(lapTime(page, 1)).toBeVisible();
  // The parts of the newer version have all been fetched before the older one takes their place.
  await page.waitForLoadState("networkidle");
  served.swap(buildFolder);
  await page.reload();
  await expect(page.getByText("This logbook was last used by a newer version of Lap Ledger.")).toBeVisible();
  await expect(page.getByText(/clear/i)).toHaveCount(0);
  await expect(entryField(page)).toHaveCount(0);
  const { backup } = await savedBackup(page, "Save a backup");
  expect(backup.schema).toBe(5);
  expect(backup.counts).toMatchObject({ cars: 1, sessions: 1, runs: 1, tyreSets: 0 });
  expect(backup.tables["cars"]).toMatchObject([{ name: "club hatch", wheels: 4 }]);
  expect(await logbooksThere(page)).toMatchObject([{ version: 50 }]);
  served.swap(next);
  await page.getByRole("button", { name: "Reload" }).click();
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
});

test("a row that a newer version cannot take over goes aside and is named; all others come along, and the driver goes on", async ({
  page,
}) => {
  served.swap(failing.failsAtRows);
  await page.goto("about:blank");
  await page.goto(served.url);
  await expect(page.getByText("One row of this logbook is set aside:")).toBeVisible();
  await expect(page.getByText("car “club hatch”")).toBeVisible();
  expect(await logbooksThere(page)).toMatchObject([{ version: 50 }]);
  expect(await storedRows(page, "cars")).toEqual([]);
  expect(await storedRows(page, "runs")).toMatchObject([{ laps: [{ ms: 85_118 }] }]);
  await page.goto(`${served.url}#/data`);
  const { backup } = await savedBackup(page, "Save a backup");
  expect(backup.tables["aside"]).toMatchObject([
    { table: "cars", schema: 4, row: { name: "club hatch" }, why: expect.stringContaining("on purpose") },
  ]);
  expect(backup.counts).toMatchObject({ aside: 1, runs: 1 });

  // A version that can take it over puts it back.
  served.swap(next);
  await page.reload();
  await page.getByRole("button", { name: "Put back" }).click();
  await expect(page.getByText("One row of this logbook is set aside:")).toBeHidden();
  expect(await storedRows(page, "cars")).toMatchObject([{ name: "club hatch", wheels: 4 }]);
});

test("the driver keeps an intact logbook when its upgrade fails as a whole, and can back it up from the fault's page", async ({
  page,
}) => {
  served.swap(failing.failsAsAWhole);
  await page.goto("about:blank");
  await page.goto(served.url);
  await expect(page.getByRole("heading", { name: "Lap Ledger cannot open your logbook" })).toBeVisible();
  await expect(page.getByText("Nothing was changed")).toBeVisible();
  const { backup } = await savedBackup(page, "Save a backup");
  expect(backup.schema).toBe(4);
  expect(backup.counts).toMatchObject({ cars: 1, sessions: 1, runs: 1 });
  expect(backup.tables["runs"]).toMatchObject([{ laps: [{ ms: 85_118 }] }]);
  expect(await logbooksThere(page)).toMatchObject([{ version: 40 }]);
  served.swap(buildFolder);
  await page.getByRole("button", { name: "Reload" }).click();
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
  expect((await storedRows(page, "cars"))[0]).not.toHaveProperty("wheels");
  await logLap(page, "1:25.300");
});

test.describe("when the app's own script fails before it has begun", () => {
  test.use({ expected: [/this code fails on purpose/] });
  test("the driver can back up all the same", async ({ page }) => {
    served.swap(failing.failsAtImport);
    await page.goto("about:blank");
    await page.goto(served.url);
    await expect(page.getByRole("heading", { name: "Lap Ledger cannot begin" })).toBeVisible();
    await expect(page.getByText("this code fails on purpose")).toBeVisible();
    const { backup } = await savedBackup(page, "Save a backup");
    expect(backup.schema).toBe(4);
    expect(backup.tables["runs"]).toMatchObject([{ laps: [{ ms: 85_118 }] }]);
    served.swap(buildFolder);
    await page.getByRole("button", { name: "Reload" }).click();
    await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
  });
});

test("the driver is told to reload when another tab upgraded while this page was frozen, and old code writes no more", async ({
  page,
  context,
}) => {
  const transit = (what: "pagehide" | "pageshow") =>
    page.evaluate((type) => {
      window.dispatchEvent(new PageTransitionEvent(type, { persisted: true }));
    }, what);
  await transit("pagehide");
  served.swap(next);
  const newer = await context.newPage();
  await newer.goto(served.url);
  await expect(lapTime(newer, 1)).toBeVisible();
  await transit("pageshow");
  await entryField(page).fill("1:25.300");
  await entryField(page).press("Enter");
  await expect(page.getByRole("alert").filter({ hasText: "Not stored: 1:25.300" })).toBeVisible();
  await expect(page.getByRole("alert").filter({ hasText: "updated in another tab" }).first()).toBeVisible();
  expect(await storedRows(newer, "runs")).toMatchObject([{ laps: [{ ms: 85_118 }] }]);
  await page.reload();
  await expect(lapTime(page, 2)).toHaveAccessibleName("Edit lap 2: 1:25.300");
});
