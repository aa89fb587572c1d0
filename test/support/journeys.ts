import { expect, type Locator, type Page, test as plain } from "@playwright/test";
import { watch } from "./journeyWatch.ts";
import { separateMs } from "./waits.ts";

/**
 * A journey. Whatever it does, no request may leave the origin, nothing may break the policy, no dialog of the
 * browser may open, and the console stays without errors; `expected` names errors that the journey provokes.
 */
export const test = plain.extend<{ expected: RegExp[]; watched: undefined }>({
  expected: [[], { option: true }],
  watched: [
    async ({ context, baseURL, expected }, use) => {
      const seen = await watch(context, baseURL ?? "");
      await use(undefined);
      expect(seen.filter((line) => !expected.some((pattern) => pattern.test(line)))).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };

/** The field of the entry line. */
export const entryField = (page: Page) => page.getByRole("region", { name: "Entry" }).getByRole("textbox");

/** What the typed text will become, or why it cannot. */
export const reading = (page: Page) => page.getByRole("region", { name: "Entry" });

/** One run's block on the page of the session. */
export const runBlock = (page: Page, number: number) =>
  page.getByRole("region", { name: `Run ${number}`, exact: true });

/** The time of a lap of the run being driven; it opens the lap for editing. */
export const lapTime = (page: Page, number: number) =>
  page.getByRole("button", { name: new RegExp(`^Edit lap ${number}: `) }).first();

/** Opens the app at its first page. */
export async function open(page: Page, hash = ""): Promise<void> {
  await page.goto(`./${hash}`);
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
}

/** Starts a session of a combo, from Log; a combo that is not there is made. The rest of the form is left alone. */
export async function startSession(
  page: Page,
  car: string,
  track: string,
  more: { readonly target?: string; readonly date?: string } = {},
): Promise<void> {
  await chooseCombo(page, car, track);
  if (Object.keys(more).length > 0)
    await page.getByRole("button", { name: "Focus, target, conditions, another date" }).click();
  if (more.target !== undefined) await page.getByLabel("Target of the day").fill(more.target);
  if (more.date !== undefined) await page.getByLabel("Date, if it was not today").fill(more.date);
  // The list of a field lies over what stands below it until the field is left.
  await page.getByRole("button", { name: "Start the session" }).focus();
  await page.getByRole("button", { name: "Start the session" }).click();
  await expect(entryField(page)).toBeFocused();
}

/** Types the names of a combo where others stand; a driver who reads the right ones leaves them. */
async function chooseCombo(page: Page, car: string, track: string): Promise<void> {
  for (const [name, wanted] of [
    ["Car", car],
    ["Track layout", track],
  ] as const) {
    const field = page.getByRole("combobox", { name });
    if ((await field.inputValue()) !== wanted) await field.fill(wanted);
  }
}

/** Starts a session by a clock that may be known to be wrong; where the page asks, its date is kept. */
export async function startByAnyClock(page: Page, car: string, track: string): Promise<void> {
  await chooseCombo(page, car, track);
  const start = page.getByRole("button", { name: "Start the session" });
  const asked = page.getByText(/Start the session once more to keep/);
  await start.focus();
  await start.click();
  await expect(asked.or(entryField(page))).toBeVisible();
  if (await asked.isVisible()) await start.click();
  await expect(entryField(page)).toBeFocused();
}

/** Goes to a place by the bar. */
export async function goTo(
  page: Page,
  place: "Log" | "Review" | "Targets" | "Rig" | "Corners" | "Data",
): Promise<void> {
  const bar = page.getByRole("navigation", { name: "Places" });
  const link = bar.getByRole("link", { name: place, exact: true });
  // Before the bar stands, every place would count as hidden.
  await expect(bar.getByRole("link").first()).toBeVisible();
  if (await link.isHidden()) await bar.getByRole("button", { name: /^More/ }).click();
  await link.click();
  await expect(link.and(page.locator("[aria-current]"))).toHaveCount(1);
}

/** Types one lap and presses Enter, once more where the page asks for it, and waits until it is in the book. */
export async function logLap(page: Page, text: string): Promise<void> {
  const number = await nextLap(page);
  await entryField(page).fill(text);
  await pressEnter(page);
  await expect(entryField(page)).toHaveValue("");
  await expect(lapTime(page, number)).toBeVisible();
}

/** Presses Enter in the entry line, once more where the page asks for it. */
export async function pressEnter(page: Page): Promise<void> {
  await entryField(page).press("Enter");
  if (!(await page.getByText(/Enter again if it is right|Press Add again to keep it/).isVisible())) return;
  await pauseToRead(page);
  await entryField(page).press("Enter");
}

/** The driver reads what is asked before answering; a second Enter at once is taken for a key that bounced. */
export const pauseToRead = (page: Page) => page.waitForTimeout(separateMs);

/** Opens everything that is folded in a part of the page. */
export async function unfoldAll(part: Locator): Promise<void> {
  const folded = part.locator("button[aria-expanded=false]");
  while ((await folded.count()) > 0) await folded.first().click();
}

/** Types several laps, one after the other. */
export async function logLaps(page: Page, texts: readonly string[]): Promise<void> {
  for (const text of texts) await logLap(page, text);
}

/** Number the next lap of the run will have. */
export async function nextLap(page: Page): Promise<number> {
  const label = await page
    .getByRole("region", { name: "Entry" })
    .getByText(/^Lap \d+$/)
    .textContent();
  return Number((label ?? "").replace("Lap ", ""));
}

/** Ends the run being driven; the next one stands ready. */
export async function endRun(page: Page): Promise<void> {
  await page.getByRole("button", { name: "End run" }).click();
  await expect(page.getByRole("button", { name: "End run" })).toBeHidden();
}

/** Ends the open session, with a note if one is given. */
export async function endSession(page: Page, note = ""): Promise<void> {
  await page.getByRole("button", { name: "End session" }).click();
  const dialog = page.getByRole("dialog", { name: "End the session" });
  await dialog.getByRole("textbox").fill(note);
  await dialog.getByRole("button", { name: "End the session" }).click();
  await expect(page.getByRole("button", { name: /^Go on with (run|this)/ })).toBeVisible();
}

/** A figure of what run n says, as it stands there: in its verdict between two runs, else beside the ledger. */
export const runFigure = (page: Page, run: number, name: "best" | "usual" | "laps differ by") =>
  page
    .getByRole("region", { name: new RegExp(`^(What run ${run} says|Verdict of run ${run})$`) })
    .getByRole("term")
    .filter({ hasText: name })
    .locator("xpath=following-sibling::dd[1]");
