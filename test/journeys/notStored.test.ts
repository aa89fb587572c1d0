import { failWrites, fillSpace, limitSpace, makeWritesFailable } from "../support/journeyFaults.ts";
import {
  entryField,
  expect,
  lapTime,
  logLaps,
  open,
  reading,
  startSession,
  test,
} from "../support/journeys.ts";

test("a lap whose transaction is aborted is not shown as stored, and Try again stores it once", async ({
  page,
}) => {
  await makeWritesFailable(page);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  await failWrites(page, true);
  await entryField(page).fill("1:25.340");
  await entryField(page).press("Enter");
  const notice = page.getByRole("alert").filter({ hasText: "Not stored: 1:25.340" });
  await expect(notice).toBeVisible();
  await expect(lapTime(page, 3)).toBeHidden();
  await expect(page.getByRole("status").filter({ hasText: "Lap 3 stored" })).toHaveCount(0);
  await entryField(page).fill("1:25.511");
  await entryField(page).press("Enter");
  await expect(page.getByRole("alert").filter({ hasText: "Not stored: 1:25.511" })).toBeVisible();

  await failWrites(page, false);
  await notice.getByRole("button", { name: "Try again" }).click();
  await expect(notice).toBeHidden();
  await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:25.340");
  const second = page.getByRole("alert").filter({ hasText: "Not stored: 1:25.511" });
  await second.getByRole("button", { name: "Put it back in the field" }).click();
  await expect(entryField(page)).toHaveValue("1:25.511");
  await expect(entryField(page)).toBeFocused();
  await entryField(page).press("Enter");
  await expect(lapTime(page, 4)).toHaveAccessibleName("Edit lap 4: 1:25.511");
  await page.reload();
  await expect(lapTime(page, 4)).toHaveAccessibleName("Edit lap 4: 1:25.511");
  await expect(lapTime(page, 5)).toBeHidden();
});

test("a lap that was not stored is still there after a reload", async ({ page }) => {
  await makeWritesFailable(page);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await failWrites(page, true);
  await entryField(page).fill("1:25.118");
  await entryField(page).press("Enter");
  await expect(page.getByRole("alert").filter({ hasText: "Not stored: 1:25.118" })).toBeVisible();
  await page.reload();
  await expect(lapTime(page, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
  await expect(page.getByRole("alert").filter({ hasText: "Not stored" })).toHaveCount(0);
});

test("a full disk is named, and what was typed waits until there is room", async ({
  page,
  context,
  baseURL,
}) => {
  const origin = new URL(baseURL ?? "").origin;
  const cdp = await context.newCDPSession(page);
  await limitSpace(cdp, origin, 3_000_000);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:25.902"]);
  await fillSpace(page);
  await entryField(page).fill("1:25.340");
  await entryField(page).press("Enter");
  const notice = page.getByRole("alert").filter({ hasText: "Not stored: 1:25.340" });
  await expect(notice).toContainText("no space left");
  await expect(lapTime(page, 3)).toBeHidden();
  await limitSpace(cdp, origin, undefined);
  await notice.getByRole("button", { name: "Try again" }).click();
  await expect(lapTime(page, 3)).toHaveAccessibleName("Edit lap 3: 1:25.340");
  await expect(reading(page).getByText("Not stored")).toBeHidden();
});
