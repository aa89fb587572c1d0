import { expect, type Locator, type Page } from "@playwright/test";
import { practiceDay } from "#domain";

/** What the device's calendar shows while its clock is right. */
const today = () => practiceDay(Date.now(), "Europe/Berlin", 4);

const aboutTheClock =
  /^(This device’s clock (jumped|went back|stood)|This logbook was last open on|Entries of this logbook are dated as late as)/;
const nothingToAnswer = /(is|are) dated right now\.$/;
/** It goes by itself, and what is said in it was asked for by a key. */
const passing = /^Undone: /;

/**
 * Answers what a jump of the clock makes the page ask, as a driver would who knows whether the clock is right now. Gives
 * what was answered. Throws where a notice says something that no driver of this kind should ever read.
 */
export async function answerQuestions(tab: Page, isClockRight: boolean): Promise<readonly string[]> {
  const answered: string[] = [];
  const goOn = tab.getByRole("button", { name: "Go on", exact: true });
  if (await goOn.isVisible()) {
    await goOn.click();
    answered.push("went on in spite of the clock");
  }
  if (isClockRight && (await changeDate(tab).isVisible())) {
    await changeDateToToday(tab);
    answered.push("date of the session put right");
  }
  for (const notice of await noticesAtFoot(tab)) {
    const text = (await notice.locator("p").textContent()) ?? "";
    const right = notice.getByRole("button", { name: /^Today is / });
    if (isClockRight && (await right.isVisible())) {
      await right.click();
      answered.push("dates of entries put right");
    } else if (aboutTheClock.test(text) || nothingToAnswer.test(text)) {
      await notice.getByRole("button", { name: "Close" }).click();
      answered.push("notice about the clock closed");
    } else if (!passing.test(text) && !(await notice.getByRole("button", { name: "Undo" }).isVisible()))
      throw new Error(`a notice that was not expected: ${text}`);
  }
  return answered;
}

/** The notices at the foot of the page, the newest first, so that closing one moves no other. */
async function noticesAtFoot(tab: Page): Promise<readonly Locator[]> {
  const close = tab.getByRole("button", { name: "Close", exact: true });
  const notices = await close.locator("xpath=ancestor::div[.//p][1]").all();
  return notices.reverse();
}

const changeDate = (tab: Page) => tab.getByRole("button", { name: "Change date" });

/** Dates the session on the page, which asks about its date, to today. */
export async function changeDateToToday(tab: Page): Promise<void> {
  await changeDate(tab).click();
  const dialog = tab.getByRole("dialog", { name: "Date of this session" });
  await dialog.getByLabel("Date", { exact: true }).fill(today());
  await dialog.getByRole("button", { name: "Done" }).click();
  await expect(dialog).toBeHidden();
  await expect(changeDate(tab)).toBeHidden();
}

/** On Log, while no session is open: dates the sessions whose date is in doubt to today. Gives how many. */
export async function putOldDatesRight(tab: Page): Promise<number> {
  const ahead = tab.getByText(/(dated after tomorrow|in doubt) (is|are) left out:/).getByRole("link");
  let count = 0;
  while (await ahead.first().isVisible()) {
    await ahead.first().click();
    await changeDateToToday(tab);
    await tab.getByRole("button", { name: "Back to Log" }).click();
    await expect(tab.getByRole("heading", { name: "Start a session" })).toBeVisible();
    count += 1;
  }
  return count;
}
