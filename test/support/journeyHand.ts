import type { Locator, Page } from "@playwright/test";
import { expect } from "@playwright/test";
import { entryField, lapTime, nextLap, pauseToRead, reading } from "./journeys.ts";

const names: Readonly<Record<string, string>> = { ":": "colon", ".": "point" };
const seldom = ["traffic", "contact", "slow zone", "out lap", "in lap"];

/** One thumb on a phone: taps only, and counts them. The phone's own keyboard serves for names and notes. */
export class Hand {
  readonly page: Page;
  taps = 0;

  constructor(page: Page) {
    this.page = page;
  }

  async tap(target: Locator): Promise<void> {
    this.taps += 1;
    await target.tap();
  }

  /** A button by its name. */
  button(name: string, within: Page | Locator = this.page): Promise<void> {
    return this.tap(within.getByRole("button", { name, exact: true }));
  }

  /** One of the browser's own lists: a tap to open it, one to choose. */
  async choose(list: Locator, label: string): Promise<void> {
    this.taps += 2;
    await list.selectOption({ label });
  }

  /** A field written with the phone's keyboard. */
  async write(field: Locator, text: string): Promise<void> {
    await this.tap(field);
    await field.fill(text);
  }

  /** A lap on the pad: what is typed, key by key, and its remarks in words. Asked again, it is tapped again. */
  async lap(typed: string, ...remarks: readonly string[]): Promise<void> {
    const number = await nextLap(this.page);
    const pad = reading(this.page);
    // The keys are folded at the start of a run that follows another.
    const keys = pad.getByRole("button", { name: "Keys", exact: true });
    if (await keys.isVisible()) await this.tap(keys);
    for (const sign of typed) await this.button(names[sign] ?? sign, pad);
    for (const remark of remarks) {
      if (seldom.includes(remark)) await this.button("more", pad);
      await this.button(remark, pad);
    }
    await this.button("Add", pad);
    if (await this.page.getByText(/Press Add again to keep it|The same lap again/).isVisible()) {
      await pauseToRead(this.page);
      await this.button("Add", pad);
    }
    await expect(entryField(this.page)).toHaveValue("");
    await expect(lapTime(this.page, number)).toBeVisible();
  }

  /** Laps known to all decimals, by their digits alone; they stand on the page as the whole times. */
  async laps(times: readonly string[]): Promise<void> {
    for (const time of times) {
      const number = await nextLap(this.page);
      await this.lap(time.replace(/\D/g, ""));
      await expect(lapTime(this.page, number)).toHaveAccessibleName(`Edit lap ${number}: ${time}`);
    }
  }

  /** How many taps a deed took. */
  async counted(deed: () => Promise<void>): Promise<number> {
    const before = this.taps;
    await deed();
    return this.taps - before;
  }
}
