import { type BrowserContext, expect, type Page } from "@playwright/test";
import { readyToCrash } from "../support/journeyFaults.ts";
import {
  endRun,
  entryField,
  lapTime,
  logLap,
  open,
  pauseToRead,
  pressEnter,
  startByAnyClock,
  startSession,
} from "../support/journeys.ts";
import type { Dice } from "../support/mutateBackup.ts";
import { backAfterKill } from "./backAfterKill.ts";
import type { DeviceClock } from "./deviceClock.ts";
import type { Model } from "./model.ts";
import { takeNextVersion } from "./nextVersion.ts";
import type { Deed, Odds } from "./odds.ts";
import { answerQuestions, putOldDatesRight } from "./questions.ts";
import { restoreFromBackup } from "./restoring.ts";

const asTyped = (ms: number) => `1:${((ms - 60_000) / 1000).toFixed(3)}`;
const cars = ["club hatch", "small coupe", "old saloon"] as const;

interface Surroundings {
  readonly context: BrowserContext;
  readonly tabs: [Page, Page];
  readonly clock: DeviceClock;
  readonly dice: Dice;
  readonly model: Model;
  readonly odds: Odds;
}

/** A driver who does anything at any time in two tabs of one browser, and the model that does the same. */
export class Driver {
  readonly context: BrowserContext;
  readonly clock: DeviceClock;
  readonly dice: Dice;
  readonly model: Model;
  readonly odds: Odds;
  readonly tabs: [Page, Page];
  private isOffline = false;
  private lastTime = 0;
  /** Changes of the logbook so far, undone ones and their undoing too. */
  changes = 0;
  /** Tabs killed so far. */
  kills = 0;
  /** How often each thing was done, and what came of it. */
  readonly deeds: Record<string, number> = {};

  constructor({ context, tabs, clock, dice, model, odds }: Surroundings) {
    this.context = context;
    this.tabs = tabs;
    this.clock = clock;
    this.dice = dice;
    this.model = model;
    this.odds = odds;
  }

  private readonly ways: Readonly<Record<Deed, () => Promise<void>>> = {
    "lap added": () => this.add(),
    "lap edited": () => this.edit(false),
    "lap edited, undone": () => this.edit(true),
    "lap deleted": () => this.remove(false),
    "lap deleted, undone": () => this.remove(true),
    "lap added, undone": () => this.addAndUndo(),
    "run ended": () => this.endRun(),
    "lap in both tabs at once": () => this.addInBoth(),
    "tab reloaded": () => this.reload(),
    "tab killed": () => this.kill(),
    "tab killed at Enter": () => this.killAtEnter(),
    "tab killed half-typed": () => this.killHalfTyped(),
    "both tabs killed half-typed": () => this.killBoth(),
    "network lost or back": () => this.toggleNetwork(),
    "session ended, another begun": () => this.nextSession(),
    "backup restored": () => this.restore(),
    "clock jumped": () => this.clock.jump(this.dice),
    "questions answered": () => this.answer(),
  };

  /** Does one thing, chosen by the dice. */
  async step(): Promise<void> {
    const isLong = this.model.run.length > 12;
    const odds = Object.entries(isLong ? { ...this.odds, "run ended": 60 } : this.odds) as [Deed, number][];
    const sum = odds.reduce((all, [, weight]) => all + weight, 0);
    let left = (this.dice(1_000_000) / 1_000_000) * sum;
    const [deed] = odds.find(([, weight]) => {
      left -= weight;
      return left < 0;
    }) ?? ["lap added" as const];
    this.count(deed);
    await this.ways[deed]();
  }

  /** The app goes over to the version that is served from now on, with a line half typed. */
  async update(): Promise<void> {
    await this.setOffline(false);
    const ms = this.aTime();
    await takeNextVersion(this.tabs, asTyped(ms).slice(0, -2));
    await logLap(this.tabs[1], asTyped(ms));
    this.model.run.push(ms);
    this.changes += 1;
    await this.follow();
  }

  private count(what: string, times = 1): void {
    if (times > 0) this.deeds[what] = (this.deeds[what] ?? 0) + times;
  }

  async begin(): Promise<void> {
    await startSession(this.tabs[0], cars[0], "Varnholt Ring");
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
    await this.beginAnother();
  }

  /** The first tab stands at a session that has just ended. */
  private async beginAnother(): Promise<void> {
    const [tab] = this.tabs;
    await tab.goto("./#/log");
    await expect(tab.getByRole("heading", { name: "Start a session" })).toBeVisible();
    if (this.clock.isRight) {
      const changed = await putOldDatesRight(tab);
      this.count("date of an old session put right", changed);
      this.changes += changed;
    }
    await startByAnyClock(tab, cars[this.dice(cars.length)] ?? cars[0], "Varnholt Ring");
    this.model.startSession();
    this.changes += 2;
    await this.gather();
  }

  private async reload(): Promise<void> {
    await this.tabs[this.which].reload();
    await this.follow();
  }

  private async kill(): Promise<void> {
    await this.crash(this.which);
    await this.follow();
  }

  /** Enter and the crash at once, or the crash behind it, or not before the lap is shown: then it is in the book. */
  private async killAtEnter(): Promise<void> {
    const which = this.which;
    const ms = this.aTime();
    const [typed, number] = [asTyped(ms), this.model.run.length + 1];
    const tab = this.tabs[which];
    const field = entryField(tab);
    await field.pressSequentially(typed, { delay: 30 });
    const enter = () => field.press("Enter", { noWaitAfter: true });
    const when = this.dice(3);
    if (when === 0) await this.crash(which, () => void enter().catch(() => undefined));
    else if (when === 1) {
      await enter();
      await this.crash(which);
    } else {
      await pressEnter(tab);
      await expect(lapTime(tab, number)).toBeVisible();
      await this.crash(which);
    }
    const { how, keysLost } = await backAfterKill(this.tabs[which], { typed, begun: typed, number });
    if (when === 2) expect(how).toBe("stored");
    this.count(`killed at Enter: ${how}`);
    this.count("keys to press again", keysLost);
    await this.hasLap(ms);
  }

  private async killHalfTyped(): Promise<void> {
    const which = this.which;
    const ms = this.aTime();
    const begun = this.beginningOf(ms);
    await entryField(this.tabs[which]).pressSequentially(begun, { delay: 30 });
    await this.crash(which);
    await this.finish(which, ms, begun);
  }

  /** The tab the line was typed in is opened first, and alone: nobody else can have typed it. */
  private async killBoth(): Promise<void> {
    const which = this.which;
    const other = which === 0 ? 1 : 0;
    const ms = this.aTime();
    const begun = this.beginningOf(ms);
    await entryField(this.tabs[which]).pressSequentially(begun, { delay: 30 });
    for (const one of [which, other] as const) await this.close(one);
    await this.openAgain(which);
    await this.finish(which, ms, begun, async () => this.openAgain(other));
  }

  private beginningOf(ms: number): string {
    const typed = asTyped(ms);
    return typed.slice(0, 4 + this.dice(typed.length - 3));
  }

  private async finish(which: 0 | 1, ms: number, begun: string, then?: () => Promise<void>): Promise<void> {
    const number = this.model.run.length + 1;
    const { how, keysLost } = await backAfterKill(this.tabs[which], { typed: asTyped(ms), begun, number });
    this.count(`killed half-typed: ${how}`);
    this.count("keys to press again", keysLost);
    await then?.();
    await this.hasLap(ms);
  }

  private async hasLap(ms: number): Promise<void> {
    this.model.run.push(ms);
    this.changes += 1;
    await this.follow();
  }

  /** @param asItDies done in the same moment */
  private async crash(which: 0 | 1, asItDies?: () => void): Promise<void> {
    await this.close(which, asItDies);
    await this.openAgain(which);
  }

  private async close(which: 0 | 1, asItDies?: () => void): Promise<void> {
    this.kills += 1;
    const crash = await readyToCrash(this.tabs[which]);
    asItDies?.();
    await crash();
    await this.tabs[which].close();
  }

  private async openAgain(which: 0 | 1): Promise<void> {
    this.tabs[which] = await this.context.newPage();
    await open(this.tabs[which]);
  }

  /** What stands on a page is answered; a question whether the session is over now and then with yes. */
  private async answer(): Promise<void> {
    const which = this.which;
    const tab = this.tabs[which];
    const isOver = tab.getByRole("button", { name: "End it at its last lap" });
    if (which === 0 && this.model.run.length > 0 && this.dice(3) === 0 && (await isOver.isVisible())) {
      await isOver.click();
      await expect(tab.getByRole("button", { name: /^Go on with (run|this)/ })).toBeVisible();
      this.count("session ended at its last lap");
      return this.beginAnother();
    }
    for (const answered of await answerQuestions(tab, this.clock.isRight)) {
      this.count(answered);
      if (answered === "date of the session put right") this.changes += 1;
    }
    await this.follow();
  }

  private async toggleNetwork(): Promise<void> {
    await this.setOffline(!this.isOffline);
  }

  private async setOffline(isOffline: boolean): Promise<void> {
    this.isOffline = isOffline;
    await this.context.setOffline(isOffline);
  }

  /** Saves a backup and goes on in what is restored from it, in both tabs, under a clock that is right. */
  private async restore(): Promise<void> {
    await this.clock.setRight();
    this.count("row set aside, put back", await restoreFromBackup(this.tabs[0]));
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
