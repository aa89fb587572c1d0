import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { expectAccessible } from "../support/journeyAxe.ts";
import { expect, goTo, open, test } from "../support/journeys.ts";

const part = (page: Page) => page.getByRole("region", { name: "Import laps" });

async function choose(page: Page, name: string, text: string): Promise<void> {
  const asked = page.waitForEvent("filechooser");
  await part(page)
    .getByRole("button", { name: /^Choose (a|another) table/ })
    .click();
  await (await asked).setFiles({ name, mimeType: "text/csv", buffer: Buffer.from(text) });
}

const oldTimes = `\uFEFFDatum;Auto;Strecke;Zeit;Bemerkung
3.4.2026;club hatch;Märlow Fen;1:24,9;
3.4.2026;club hatch;Märlow Fen;1:24,512;"spät; =1+1"
10.4.2026;club hatch;Märlow Fen;1.234,5;
`;

test("a spreadsheet of old times becomes sessions, is taken back, and comes back from an export", async ({
  page,
}) => {
  await open(page);
  await goTo(page, "Data");
  await choose(page, "old times.csv", oldTimes);
  await expect(part(page).getByText("2 laps in 1 session, Fri 3 Apr 2026.")).toBeVisible();
  await expect(part(page).getByText("“3.4.2026” is read as Fri 3 Apr 2026.")).toBeVisible();
  await expect(part(page).getByText("“1:24,9” is read as 1:24.9.")).toBeVisible();
  await expect(part(page).getByRole("row", { name: /^4 / })).toContainText("1.234,5");
  await expectAccessible(page, "the preview of a table");
  await part(page).getByRole("button", { name: "Import 2 laps" }).click();
  await expect(page.getByText("2 laps imported in 1 session.")).not.toHaveCount(0);

  const saved = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as CSV" }).click();
  const file = await (await saved).path();
  const text = readFileSync(file, "utf8");
  expect(text).toContain("1:24.9,84.9,");
  expect(text).toContain('"spät; =1+1"');

  await page.keyboard.press("Control+z");
  await expect(page.getByText(/^Undone: 2 laps imported/)).not.toHaveCount(0);
  await choose(page, "laps.csv", text);
  await part(page).getByRole("button", { name: "Import 2 laps" }).click();
  await expect(page.getByText("2 laps imported in 1 session.")).not.toHaveCount(0);
  await choose(page, "laps.csv", text);
  await expect(part(page).getByText(/2 laps are in this logbook already/)).toBeVisible();
  await expect(part(page).getByRole("button", { name: "Nothing to import" })).toBeDisabled();

  await goTo(page, "Review");
  await expect(page.getByText(/Märlow Fen/).first()).toBeVisible();
});
