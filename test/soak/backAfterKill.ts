import { expect, type Page } from "@playwright/test";
import { entryField, lapTime, pressEnter } from "../support/journeys.ts";

/** A quick hand may be ahead of the disk by so many keys. */
const keysOnTheWay = 2;

/**
 * After the tab was killed, in the one opened in its place: the lap that was being typed is in the book, or its text
 * comes back or is offered, and is then typed to its end. Gives how, and how many keys had to be pressed again.
 * @param typed the whole line
 * @param number the number the lap has or will have
 */
export async function backAfterKill(
  tab: Page,
  { typed, begun, number }: { readonly typed: string; readonly begun: string; readonly number: number },
): Promise<{ readonly how: "stored" | "offered" | "back in the field"; readonly keysLost: number }> {
  const lap = lapTime(tab, number);
  const offered = tab.getByRole("button", { name: "Take it up" });
  const field = entryField(tab);
  const inField = tab.locator("#entry-field:not(:placeholder-shown)");
  await expect(lap.or(offered).or(inField).first()).toBeVisible({ timeout: 15_000 });
  if (await lap.isVisible()) return { how: "stored", keysLost: 0 };
  const isOffered = await offered.isVisible();
  if (isOffered) await offered.click();
  await expect(inField).toBeVisible();
  const back = await field.inputValue();
  expect(begun.startsWith(back), `“${back}” came back of “${begun}”`).toBe(true);
  const keysLost = begun.length - back.length;
  expect(keysLost, `“${back}” came back of “${begun}”`).toBeLessThanOrEqual(keysOnTheWay);
  await field.fill(typed);
  await pressEnter(tab);
  await expect(lap).toBeVisible();
  await expect(offered).toBeHidden();
  return { how: isOffered ? "offered" : "back in the field", keysLost };
}
