import type { BrowserContext } from "@playwright/test";
import type { Dice } from "../support/mutateBackup.ts";

const dayMs = 86_400_000;
/** Ten years ahead, ten years back, some weeks off in both directions: flat batteries and slips in a settings page. */
const wrongByDays = [3650, -3650, 40, -40] as const;

/** The clock of the driver's pages, which can be set wrong and right again; workers keep the machine's. */
export class DeviceClock {
  private readonly context: BrowserContext;
  private wrongBy = 0;

  constructor(context: BrowserContext) {
    this.context = context;
  }

  /** To be called before the first page is opened. */
  async install(): Promise<void> {
    await this.context.clock.install();
  }

  get isRight(): boolean {
    return this.wrongBy === 0;
  }

  /** From right to wrong; from wrong to right as often as to otherwise wrong. */
  async jump(dice: Dice): Promise<void> {
    if (!this.isRight && dice(2) === 0) return this.setRight();
    const others = wrongByDays.filter((days) => days !== this.wrongBy);
    await this.set(others[dice(others.length)] ?? 0);
  }

  async setRight(): Promise<void> {
    await this.set(0);
  }

  private async set(days: number): Promise<void> {
    this.wrongBy = days;
    await this.context.clock.setSystemTime(Date.now() + days * dayMs);
  }
}
