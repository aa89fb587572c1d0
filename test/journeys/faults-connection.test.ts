import type { Page } from "@playwright/test";
import {
  entryField,
  expect,
  lapTime,
  logLap,
  logLaps,
  open,
  startSession,
  test,
} from "../support/journeys.ts";
import { retryMs } from "../support/waits.ts";

declare global {
  interface Window {
    /** How many writes are still to be refused, and by which error. */
    refuse?: { left: number; name: string };
  }
}

/** Lets writes to a logbook be refused as a browser does that has lost its connection; before the page opens. */
const makeRefusable = (page: Page) =>
  page.addInitScript(() => {
    const real = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...given) {
      const asked = window.refuse;
      const isWrite = given[1] === "readwrite" && this.name.startsWith("lap-ledger-");
      if (asked !== undefined && asked.left > 0 && isWrite) {
        asked.left -= 1;
        throw new DOMException("Connection to Indexed Database server lost", asked.name);
      }
      return real.apply(this, given);
    };
  });

/** The next so many writes are refused. */
const refuse = (page: Page, left: number, name: string) =>
  page.evaluate(
    (asked) => {
      window.refuse = asked;
    },
    { left, name },
  );
const refusalsLeft = (page: Page) => page.evaluate(() => window.refuse?.left ?? 0);

for (const error of ["InvalidStateError", "UnknownError"])
  test(`the driver sees nothing of a connection lost once (${error}): the lap is stored`, async ({
    page,
  }) => {
    await makeRefusable(page);
    await open(page);
    await startSession(page, "club hatch", "Varnholt Ring");
    await logLap(page, "1:25.118");
    await refuse(page, 1, error);
    await logLap(page, "1:25.300");
    expect(await refusalsLeft(page)).toBe(0);
    await expect(page.getByRole("alert").filter({ hasText: "Not stored" })).toHaveCount(0);
    await logLap(page, "1:25.400");
    await page.reload();
    await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:25.400");
    await expect(lapTime(page, 4)).toBeHidden();
  });

test("the driver is told to reload when the connection stays lost, and the lap is stored after it", async ({
  page,
}) => {
  await makeRefusable(page);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  await refuse(page, 1_000_000, "InvalidStateError");
  await entryField(page).fill("1:25.300");
  await entryField(page).press("Enter");
  const notice = page.getByRole("alert").filter({ hasText: "Not stored: 1:25.300" });
  await expect(notice).toContainText("Reload the page");
  const left = await refusalsLeft(page);
  expect(left).toBeLessThan(1_000_000);
  await page.waitForTimeout(retryMs);
  expect(left - (await refusalsLeft(page))).toBeLessThan(5); // no endless retrying
  await page.reload();
  await expect(lapTime(page, 2)).toHaveAccessibleName("Edit lap 2: 1:25.300");
  await expect(lapTime(page, 3)).toBeHidden();
});

test("the driver comes back by the back button to the same place and line, and the next lap is stored", async ({
  page,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  await entryField(page).pressSequentially("1:25.4", { delay: 60 });
  await page.goto("about:blank");
  await page.goBack();
  await expect(entryField(page)).toHaveValue("1:25.4");
  await expect(lapTime(page, 2)).toHaveAccessibleName("Edit lap 2: 1:25.902");
  await entryField(page).press("Enter");
  await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:25.4");
});

/** Sends the page what it gets when it is frozen for the back button, or thawed: not every browser does it in tests. */
const transit = (page: Page, what: "pagehide" | "pageshow") =>
  page.evaluate((type) => {
    window.dispatchEvent(new PageTransitionEvent(type, { persisted: true }));
  }, what);

test("the driver finds a page that was frozen and thawed up to date, with the line, and the next lap is stored", async ({
  page,
  context,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLap(page, "1:25.118");
  await entryField(page).pressSequentially("1:25.4", { delay: 60 });
  await transit(page, "pagehide");
  const other = await context.newPage();
  await open(other);
  await logLap(other, "1:25.700");
  await transit(page, "pageshow");
  await expect(lapTime(page, 2)).toHaveAccessibleName("Edit lap 2: 1:25.700");
  await expect(entryField(page)).toHaveValue("1:25.4");
  await entryField(page).press("Enter");
  await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:25.4");
  await expect(lapTime(other, 3)).toBeVisible();
});
