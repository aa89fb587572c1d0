import type { Locator, Page } from "@playwright/test";
import { expect } from "@playwright/test";

declare global {
  interface Window {
    /** Keys in the order they came, noted before anything of the page hears of them. */
    keysSeen?: { readonly key: string; readonly isComposing: boolean }[];
  }
}

const composed = "おそい";

/** Notes every key, so that a journey can tell that it really came from a composition. */
export async function noteKeys(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.keysSeen = [];
    window.addEventListener(
      "keydown",
      ({ key, isComposing }) => window.keysSeen?.push({ key, isComposing }),
      true,
    );
  });
}

/**
 * Every row of every logbook in this browser, in one short text, but for drafts, what is computed from rows, and the note
 * of what was deleted long ago, which the app takes by itself a minute after opening.
 */
const bookNow = (page: Page) =>
  page.evaluate(async () => {
    const request = <T>(asked: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
      });
    const texts: string[] = [];
    for (const { name = "" } of await indexedDB.databases()) {
      const database = await request(indexedDB.open(name));
      const tables = [...database.objectStoreNames].filter(
        (table) => !/^(drafts|digests|changeMarks|keptAnswers|deleted)$/.test(table),
      );
      for (const table of tables) {
        const rows = await request(database.transaction(table).objectStore(table).getAll());
        texts.push(
          `${name} ${table} ${JSON.stringify(rows, (field, value) => (field === "purgedOn" ? undefined : value))}`,
        );
      }
      database.close();
    }
    const sum = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(texts.join("\n")));
    return [...new Uint8Array(sum)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  });

/**
 * Composes in a field and presses Enter and Escape, in both orders of engines: the key inside the composition, and the
 * key that comes after its end with the code 229. The text must stand in the field, and the book and the page as before.
 */
export async function composeIn(page: Page, field: Locator, where: string): Promise<void> {
  const cdp = await page.context().newCDPSession(page);
  const title = await page.title();
  const heads = () => page.getByRole("heading").allTextContents();
  await field.focus();
  const old = await field.inputValue();
  const hasLines = await field.evaluate((element) => element instanceof HTMLTextAreaElement);
  await field.fill("");
  const [book, headings, address] = [await bookNow(page), await heads(), page.url()];
  const expectAsBefore = async (key: string) => {
    await expect(field, `${where}: ${key}`).toBeFocused();
    // Where the key reaches the browser itself, a text of many lines gets one more; an input method would have eaten it.
    await expect(field, `${where}: ${key}`).toHaveValue(hasLines ? /^おそい\n?$/ : composed);
    expect(await bookNow(page), `${where}: ${key} stored something`).toBe(book);
    expect([await heads(), page.url()], `${where}: ${key} changed the page`).toEqual([headings, address]);
  };
  for (const key of ["Escape", "Enter"]) {
    await cdp.send("Input.imeSetComposition", { text: composed, selectionStart: 3, selectionEnd: 3 });
    await page.keyboard.press(key);
    expect(await page.evaluate(() => window.keysSeen?.at(-1))).toEqual({ key, isComposing: true });
    await expectAsBefore(`${key} while composing`);
    await cdp.send("Input.imeSetComposition", { text: "", selectionStart: 0, selectionEnd: 0 });
    await cdp.send("Input.insertText", { text: composed });
    await field.evaluate((element, name) => {
      const init = { key: name, code: name, keyCode: 229, bubbles: true, cancelable: true };
      element.dispatchEvent(new KeyboardEvent("keydown", init));
      // What the key does by itself where no composition is going on: a form is sent, a dialog is cancelled.
      if (name === "Enter" && element instanceof HTMLInputElement) element.form?.requestSubmit();
      if (name === "Escape")
        element.closest("dialog")?.dispatchEvent(new Event("cancel", { cancelable: true }));
      element.dispatchEvent(new KeyboardEvent("keyup", { ...init, keyCode: 0 }));
    }, key);
    await expectAsBefore(`${key} after the composition`);
    await field.fill("");
  }
  await field.fill(old);
  expect(await page.title()).toBe(title);
  await cdp.detach();
}

/** Composes in every field of text that is in sight. Gives how many there were. */
export async function composeInEach(page: Page, part: Page | Locator, where: string): Promise<number> {
  const fields = part.locator(
    "input:not([type]):visible, input[type=text]:visible, input[type=search]:visible, textarea:visible",
  );
  await expect(fields.first(), where).toBeVisible();
  const count = await fields.count();
  for (let index = 0; index < count; index += 1)
    await composeIn(page, fields.nth(index), `${where}, field ${index + 1} of ${count}`);
  return count;
}
