import type { Page } from "@playwright/test";
import { endRun, entryField, expect, lapTime, open, startSession, test } from "../support/journeys.ts";

/** Pastes a text into the entry line, as from a spreadsheet or a chat. */
const paste = (page: Page, text: string) =>
  entryField(page).evaluate((field, pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", pasted);
    field.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, text);

test("of a pasted block every line is shown as read or not read before anything is stored", async ({
  page,
}) => {
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  const lines = Array.from({ length: 30 }, (_, index) =>
    index % 3 === 2 ? `rubbish ${index}` : `1:25.${String(100 + index)}`,
  );
  await paste(page, lines.join("\r\n"));
  const preview = page.getByRole("dialog", { name: "20 laps, 10 not read" });
  await expect(preview.getByRole("row", { name: /^3 rubbish 2 / })).toBeVisible();
  await expect(preview.getByRole("row", { name: /^30 rubbish 29 / })).toBeVisible();
  await expect(lapTime(page, 1)).toBeHidden();

  // Put aside, it is still there, after a reload too; thrown away, it is gone.
  await page.keyboard.press("Escape");
  await page.reload();
  await expect(preview).toBeVisible();
  await preview.getByRole("button", { name: "Add 20 laps" }).click();
  await expect(preview).toBeHidden();
  await expect(lapTime(page, 20)).toHaveAccessibleName("Edit lap 20: 1:25.128");
  await expect(lapTime(page, 21)).toBeHidden();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(lapTime(page, 1)).toBeHidden();
  await paste(page, "1:25.1\nrubbish");
  await page
    .getByRole("dialog", { name: "1 lap, 1 not read" })
    .getByRole("button", { name: "Discard the text" })
    .click();
  await expect(page.getByRole("dialog")).toBeHidden();
  await expect(entryField(page)).toBeFocused();
});

test("ten thousand pasted lines are previewed and stored without a stop", async ({ page }) => {
  test.setTimeout(180_000);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  const lines = Array.from({ length: 10_000 }, (_, index) =>
    index % 100 === 99
      ? ""
      : index % 50 === 49
        ? "no lap"
        : `1:2${5 + (index % 2)}.${String(index % 1000).padStart(3, "0")}`,
  );
  const unread = lines.filter((line) => line === "no lap").length;
  const read = lines.filter((line) => line.startsWith("1:")).length;
  expect([read, unread]).toEqual([9_800, 100]);
  const began = Date.now();
  await paste(page, lines.join("\n"));
  const preview = page.getByRole("dialog", { name: "9,800 laps, 100 not read" });
  await expect(preview).toBeVisible();
  test
    .info()
    .annotations.push({ type: "preview of 10,000 lines, ms", description: String(Date.now() - began) });
  await preview.getByRole("button", { name: "Add 9,800 laps" }).click();
  await expect(preview).toBeHidden();
  await expect(page.getByText("9800 laps added")).not.toHaveCount(0);
  await expect(entryField(page)).toBeEditable();
});

for (const size of [
  { width: 1280, height: 900 },
  { width: 390, height: 844 },
])
  test(`rows copied from the ledger are the same laps again, ${size.width} px wide`, async ({
    page,
    context,
  }) => {
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    await page.setViewportSize(size);
    await open(page);
    await startSession(page, "club hatch", "Varnholt Ring", { target: "1:23.000" });
    await paste(page, "1:25.100\n1:24.9\n1:31.250 f@5 c / wide on the grass\n0:59.5s\no\n1:24.300");
    await page.getByRole("button", { name: /^Add \d laps/ }).click();
    await expect(lapTime(page, 6)).toBeVisible();
    const copied = await page.getByRole("table", { name: "Laps of run 1" }).evaluate((table) => {
      const rows = table.querySelector("tbody");
      if (rows === null) throw new Error("no rows");
      window.getSelection()?.selectAllChildren(rows);
      return document.execCommand("copy") ? navigator.clipboard.readText() : "";
    });
    expect(copied).not.toContain("Edit lap");
    await endRun(page);
    await paste(page, copied);
    await expect(page.getByRole("dialog", { name: "6 laps, 0 not read" })).toBeVisible();
    await page.getByRole("button", { name: "Add 6 laps" }).click();
    const texts = (number: number) =>
      page
        .getByRole("table", { name: `Laps of run ${number}` })
        .getByRole("row")
        .evaluateAll((rows) =>
          rows.slice(1).map((row) => {
            const cells = [...row.querySelectorAll("td")].map(({ textContent }) => textContent);
            return [
              cells[0],
              cells
                .at(-1)
                ?.replace(/^(was PB|PB)( · )?/, "")
                .trim(),
            ];
          }),
        );
    await expect(page.getByRole("table", { name: "Laps of run 2" })).toBeVisible();
    const unfold = page.getByRole("button", { name: "Show laps" });
    if (await unfold.isVisible()) await unfold.click();
    expect(await texts(2)).toEqual(await texts(1));
  });
