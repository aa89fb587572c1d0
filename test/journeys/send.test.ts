import type { Page } from "@playwright/test";
import { anotherDevice, mergeLine, rowsOf } from "../support/journeyDevices.ts";
import { expect, goTo, lapTime, logLaps, open, startSession, test } from "../support/journeys.ts";

const button = (page: Page, name: string | RegExp) =>
  page.getByRole("region", { name: "Send and receive" }).getByRole("button", { name });

/** Sends by text: what stands in the field to copy from is what a driver would copy. */
async function copied(page: Page, what: string | RegExp): Promise<string> {
  await button(page, what).click();
  await button(page, "Copy as text").click();
  const text = await page.getByRole("textbox", { name: "Text to copy" }).inputValue();
  await button(page, "I have copied it").click();
  await expect(page.getByText(/Marked as sent/).first()).toBeVisible();
  return text;
}

async function pasteAndMerge(page: Page, text: string): Promise<void> {
  await page.getByRole("textbox", { name: "Text from the other device" }).fill(text);
  await button(page, "Look at the text").click();
  await button(page, "Merge into the open logbook").click();
}

/** A browser that gives the page no clipboard, so that the text is shown. */
const noClipboard = (page: Page) =>
  page.addInitScript(() => {
    Object.defineProperty(navigator, "clipboard", {
      value: { writeText: () => Promise.reject(new Error("no")) },
    });
  });

test("text goes both ways, twice, and nothing is doubled", async ({ page, browser, baseURL }) => {
  await noClipboard(page);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.930 f@5 / late"]);
  await goTo(page, "Data");
  const evening = await copied(page, /^Send the session of/);
  expect(evening.length).toBeLessThan(4000);

  const pc = await anotherDevice(browser, baseURL);
  await noClipboard(pc);
  await pc.reload();
  await goTo(pc, "Data");
  await pasteAndMerge(pc, `Phone, 18:05:\n${evening}\nsee you`);
  await expect(pc.getByText(/rows added or changed/).first()).toBeVisible();
  await goTo(pc, "Log");
  await expect(pc.getByText("late")).toBeVisible();
  await logLaps(pc, ["1:24.500"]);

  // Back to the phone, which has driven on; then once more the same text, and once more to the PC.
  await goTo(pc, "Data");
  const back = await copied(pc, "Send everything");
  await goTo(page, "Log");
  await logLaps(page, ["1:24.400"]);
  await goTo(page, "Data");
  await pasteAndMerge(page, back);
  await expect(page.getByText(/added or changed/).first()).toBeVisible();
  await page.getByRole("textbox", { name: "Text from the other device" }).fill(back);
  await button(page, "Look at the text").click();
  await expect(page.getByText("Nothing would change")).toBeVisible();
  await button(page, "Cancel").click();
  const rest = await copied(page, "Send everything");
  await pc.getByRole("textbox", { name: "Text from the other device" }).fill(rest);
  await button(pc, "Look at the text").click();
  await expect(mergeLine(pc, "laps")).toBeVisible();
  await button(pc, "Merge into the open logbook").click();
  await expect(pc.getByText(/added or changed/).first()).toBeVisible();
  for (const device of [page, pc]) {
    await goTo(device, "Log");
    await expect(lapTime(device, 4)).toBeVisible();
    await expect(lapTime(device, 5)).toHaveCount(0);
  }
  expect((await rowsOf(page))["runs"]).toEqual((await rowsOf(pc))["runs"]);
});

test("a session is sent from its own page, and says nothing of what else has been sent", async ({
  page,
  browser,
  baseURL,
}) => {
  await noClipboard(page);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118"]);
  await page.getByRole("button", { name: "Session", exact: true }).click();
  await page.getByRole("button", { name: "Send this session to another device" }).click();
  await expect(page.getByText("Ready: 1 lap in 1 session")).toBeVisible();
  await button(page, "Copy as text").click();
  const text = await page.getByRole("textbox", { name: "Text to copy" }).inputValue();
  await button(page, "I have copied it").click();
  await expect(button(page, "Send everything")).toBeVisible();
  await page.goBack();
  await expect(lapTime(page, 1)).toBeVisible();

  const pc = await anotherDevice(browser, baseURL);
  await goTo(pc, "Data");
  await pasteAndMerge(pc, text);
  await expect(pc.getByText(/added or changed/).first()).toBeVisible();
  await goTo(pc, "Log");
  await expect(lapTime(pc, 1)).toHaveAccessibleName("Edit lap 1: 1:25.118");
});

test("a text cut short is refused, and stays in the field", async ({ page }) => {
  await noClipboard(page);
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118"]);
  await goTo(page, "Data");
  const text = await copied(page, /^Send the session of/);
  const field = page.getByRole("textbox", { name: "Text from the other device" });
  await field.fill(text.slice(0, -20));
  await button(page, "Look at the text").click();
  await expect(page.getByRole("alert").getByText(/its end is missing/)).toBeVisible();
  await expect(field).not.toHaveValue("");
});

test("the share sheet gets a text file that another device can take in", async ({
  page,
  browser,
  baseURL,
}, info) => {
  await page.addInitScript(() => {
    const shared: { name: string; type: string; text: string }[] = [];
    Object.assign(window, { shared });
    Object.assign(navigator, {
      canShare: ({ files }: { files: File[] }) => files.every(({ type }) => type === "text/plain"),
      share: async ({ files: [file] }: { files: [File] }) => {
        shared.push({ name: file.name, type: file.type, text: await file.text() });
      },
    });
  });
  await open(page);
  await startSession(page, "club hatch", "Varnholt Ring");
  await logLaps(page, ["1:25.118", "1:24.930"]);
  await goTo(page, "Data");
  await button(page, /^Send the session of/).click();
  await expect(button(page, "Share")).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(page.getByText(/Handed to the share sheet/).first()).toBeVisible();
  const shared = await page.evaluate(
    () => (window as never as { shared: { name: string; text: string }[] }).shared,
  );
  expect(shared).toHaveLength(1);
  expect(shared[0]?.name).toMatch(/^Lap-Ledger-.*\.txt$/);
  const { writeFile } = await import("node:fs/promises");
  const file = info.outputPath("shared.txt");
  await writeFile(file, shared[0]?.text ?? "");
  const pc = await anotherDevice(browser, baseURL);
  await goTo(pc, "Data");
  const chooser = pc.waitForEvent("filechooser");
  await button(pc, "Choose a received file").click();
  await (await chooser).setFiles(file);
  await expect(mergeLine(pc, "laps")).toHaveText(/2/);
});
