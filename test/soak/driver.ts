import { type BrowserContext, expect, type Page } from "@playwright/test";
import { savedBackup } from "../support/journeyDatabase.ts";
import { chooseFile } from "../support/journeyDevices.ts";
import { crashTab } from "../support/journeyFaults.ts";
import {
  endRun,
  entryField,
  goTo,
  lapTime,
  logLap,
  open,
  pauseToRead,
  startSession,
} from "../support/journeys.ts";
import type { Dice } from "../support/mutateBackup.ts";
import type { Model } from "./model.ts";

const asTyped = (ms: number) => `1:${((ms - 60_000) / 1000).toFixed(3)}`;

/** A driver who does anything at any time in two tabs of one browser, and the model that does the same. */
export class Driver {
  readonly context: BrowserContext;
  readonly dice: Dice;
  readonly model: Model;
  readonly tabs: [Page, Page];
  private isOffline = false;
  private lastTime = 0;
  /** Changes of the logbook so far, undone ones and their undoing too. */
  changes = 0;
  /** How often each thing was done. */
  readonly deeds: Record<string, number> = {};

  constructor(context: BrowserContext, tabs: [Page, Page], dice: Dice, model: Model) {
    this.context = context;
    this.tabs = tabs;
    this.dice = dice;
    this.model = model;
  }

  /** Does one thing, chosen by the dice. */
  async step(): Promise<void> {
    const { run } = this.model;
    const weights: readonly (readonly [number, string, () => Promise<void>])[] = [
      [60, "lap added", () => this.add()],
      [8, "lap edited", () => this.edit(false)],
      [4, "lap edited, undone", () => this.edit(true)],
      [5, "lap deleted", () => this.remove(false)],
      [4, "lap deleted, undone", () => this.remove(true)],
      [4, "lap added, undone", () => this.addAndUndo()],
      [run.length > 12 ? 60 : 2, "run ended", () => this.endRun()],
      [4, "lap in both tabs at once", () => this.addInBoth()],
      [3, "tab reloaded", () => this.reload()],
      [1, "tab killed", () => this.kill()],
      [1, "tab killed at Enter", () => this.killAtEnter()],
      [1.5, "network lost or back", () => this.toggleNetwork()],
      [0.4, "session ended, another begun", () => this.nextSession()],
      [0.25, "backup restored", () => this.restore()],
    ];
    const sum = weights.reduce((all, [weight]) => all + weight, 0);
    let left = (this.dice(1_000_000) / 1_000_000) * sum;
    const [, name, deed] = weights.find(([weight]) => {
      left -= weight;
      return left < 0;
    }) ?? [0, "lap added", () => this.add()];
    this.deeds[name] = (this.deeds[name] ?? 0) + 1;
    await deed();
  }

  async begin(): Promise<void> {
    await startSession(this.tabs[0], "club hatch", "Marlow Fen");
    this.model.startSession();
    this.changes += 1;
    await this.gather();
  }

  private get which(): 0 | 1 {
    return this.dice(2) === 0 ? 0 : 1;
  }

  /**
   * A time near the usual one, in full, and not the one before: so that nothing is completed and nothing is asked about.
   */
  private aTime(): number {
    const ms = 85_000 + this.dice(900);
    this.lastTime = ms === this.lastTime ? ms + 1 : ms;
    return this.lastTime;
  }

  private async add(): Promise<void> {
    const ms = this.aTime();
    await logLap(this.tabs[this.which], asTyped(ms));
    this.model.run.push(ms);
    this.changes += 1;
    await this.follow();
  }

  private async addAndUndo(): Promise<void> {
    const tab = this.tabs[this.which];
    await logLap(tab, asTyped(this.aTime()));
    await tab.keyboard.press("Control+z");
    this.changes += 2;
    await this.follow();
  }

  /** Enter in both tabs before either can know of the other: both laps are there, in either order. */
  private async addInBoth(): Promise<void> {
    const times = [this.aTime(), this.aTime()] as const;
    const count = this.model.run.length;
    await Promise.all(this.tabs.map((tab, index) => entryField(tab).fill(asTyped(times[index] ?? 0))));
    await Promise.all(this.tabs.map((tab) => entryField(tab).press("Enter")));
    for (const tab of this.tabs)
      if (await tab.getByText("Enter again if it is right").isVisible()) {
        await pauseToRead(tab);
        await entryField(tab).press("Enter");
      }
    const shown = async () => {
      const names = [lapTime(this.tabs[0], count + 1), lapTime(this.tabs[0], count + 2)];
      return Promise.all(names.map((name) => name.textContent()));
    };
    await expect(lapTime(this.tabs[0], count + 2)).toBeVisible();
    const [first = ""] = await shown();
    const isInOrder = first?.includes(asTyped(times[0])) === true;
    this.model.run.push(...(isInOrder ? times : [times[1], times[0]]));
    this.changes += 2;
    await this.follow();
  }

  private async edit(isUndone: boolean): Promise<void> {
    const { run } = this.model;
    if (run.length === 0) return this.add();
    const tab = this.tabs[this.which];
    const index = this.dice(run.length);
    const ms = this.aTime();
    await lapTime(tab, index + 1).click();
    const field = tab.getByRole("textbox", { name: `Lap ${index + 1}`, exact: true });
    await field.last().fill(asTyped(ms));
    await field.last().press("Enter");
    await expect(lapTime(tab, index + 1)).toHaveAccessibleName(`Edit lap ${index + 1}: ${asTyped(ms)}`);
    if (isUndone) await tab.keyboard.press("Control+z");
    else run[index] = ms;
    this.changes += isUndone ? 2 : 1;
    await this.follow();
    const now = asTyped(run[index] ?? 0);
    await expect(lapTime(tab, index + 1)).toHaveAccessibleName(`Edit lap ${index + 1}: ${now}`);
  }

  private async remove(isUndone: boolean): Promise<void> {
    const { run } = this.model;
    if (run.length < 2) return this.add();
    const tab = this.tabs[this.which];
    const index = this.dice(run.length);
    await lapTime(tab, index + 1).click();
    await tab.getByRole("button", { name: "Delete", exact: true }).click();
    await expect(lapTime(tab, run.length)).toBeHidden();
    if (isUndone) await tab.keyboard.press("Control+z");
    else run.splice(index, 1);
    this.changes += isUndone ? 2 : 1;
    await this.follow();
  }

  private async endRun(): Promise<void> {
    if (this.model.run.length === 0) return this.add();
    await endRun(this.tabs[this.which]);
    this.model.endRun();
    this.changes += 1;
    await this.follow();
  }

  private async nextSession(): Promise<void> {
    if (this.model.run.length === 0) return this.add();
    const [tab] = this.tabs;
    await tab.getByRole("button", { name: "End session" }).click();
    const dialog = tab.getByRole("dialog", { name: "End the session" });
    await dialog.getByRole("button", { name: "End the session" }).click();
    await expect(tab.getByRole("heading", { name: "Start a session" })).toBeVisible();
    await startSession(tab, "club hatch", "Marlow Fen");
    this.model.startSession();
    this.changes += 2;
    await this.gather();
  }

  private async reload(): Promise<void> {
    await this.tabs[this.which].reload();
    await this.follow();
  }

  private async kill(): Promise<void> {
    const which = this.which;
    await this.crash(which);
    await this.follow();
  }

  /** The lap is in the book after that, or its text is in the field; it is never lost and never there twice. */
  private async killAtEnter(): Promise<void> {
    const which = this.which;
    const ms = this.aTime();
    const count = this.model.run.length;
    const field = entryField(this.tabs[which]);
    await field.pressSequentially(asTyped(ms), { delay: 30 });
    await field.press("Enter", { noWaitAfter: true });
    await this.crash(which);
    const tab = this.tabs[which];
    const offered = tab.getByRole("button", { name: "Take it up" });
    await expect(
      lapTime(tab, count + 1)
        .or(offered)
        .first(),
    ).toBeVisible({ timeout: 10_000 });
    if (!(await lapTime(tab, count + 1).isVisible())) {
      // The other tab is open, so what was half typed here is not put into a field unasked.
      await offered.click();
      await expect(entryField(tab)).toHaveValue(asTyped(ms));
      await entryField(tab).press("Enter");
    }
    await expect(lapTime(tab, count + 1)).toBeVisible();
    this.model.run.push(ms);
    this.changes += 1;
    await this.follow();
  }

  private async crash(which: 0 | 1): Promise<void> {
    const tab = this.tabs[which];
    await crashTab(tab);
    await tab.close();
    this.tabs[which] = await this.context.newPage();
    await open(this.tabs[which]);
  }

  private async toggleNetwork(): Promise<void> {
    this.isOffline = !this.isOffline;
    await this.context.setOffline(this.isOffline);
  }

  /** Saves a backup and goes on in what is restored from it, in both tabs. */
  private async restore(): Promise<void> {
    const [tab] = this.tabs;
    await goTo(tab, "Data");
    const { path } = await savedBackup(tab, "Save a backup");
    await chooseFile(tab, "Choose a backup file", path);
    await tab.getByRole("button", { name: "Restore as a new logbook" }).click();
    await expect(tab.getByText("is open. Your other logbooks").first()).toBeVisible({ timeout: 30_000 });
    await this.gather();
  }

  /** Both tabs at the open session, from a fresh start. */
  private async gather(): Promise<void> {
    for (const tab of this.tabs) {
      await tab.goto("./#/log");
      await tab.reload();
    }
    await this.follow();
  }

  /** Both tabs show as many laps of the run as the model holds. */
  private async follow(): Promise<void> {
    const next = this.model.run.length + 1;
    for (const tab of this.tabs)
      await expect(
        tab.getByRole("region", { name: "Entry" }).getByText(`Lap ${next}`, { exact: true }),
      ).toBeVisible({ timeout: 15_000 });
  }
}
