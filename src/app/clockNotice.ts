import { practiceDay, sayDate } from "#domain";
import type { Notice } from "#state/notices.ts";

const dayMs = 86_400_000;

/** A clock that runs and sleeps with its device is put right by some seconds now and then. */
const leastBackMs = 60_000;
/**
 * While the page is open, against a count that may stop while a device sleeps: a laptop left closed for weeks has not
 * jumped.
 */
const leastAheadMs = 31 * dayMs;
/** Between two openings: a logbook may rest for a season. */
const leastAheadClosedMs = 366 * dayMs;

/** A jump of this device's clock. */
export interface ClockJump {
  /** Whether the page was open when it jumped, or the logbook was opened before and after. */
  readonly seen: "open" | "opening";
  /** What the clock said before, and what it says now; epoch milliseconds. */
  readonly before: number;
  readonly now: number;
}

/** Whether a jump is worth a word: back by more than a minute, or ahead by so much that no rest explains it. */
export function isWorthSaying({ seen, before, now }: ClockJump): boolean {
  return before - now > leastBackMs || now - before > (seen === "open" ? leastAheadMs : leastAheadClosedMs);
}

/** What the driver is told of a jump; `actions` is where what can be done about it belongs. */
export function clockNotice({ seen, before, now }: ClockJump, zone: string): Omit<Notice, "id"> {
  const dayOf = (at: number) => sayDate(practiceDay(at, zone, 0));
  const [stood, says] = [dayOf(before), dayOf(now)];
  const order = "Laps keep their order.";
  const after = "set the clock right before the next session.";
  const text =
    now > before
      ? `${
          seen === "open"
            ? `This device’s clock jumped from ${stood} to ${says}.`
            : `This logbook was last open on ${stood}; this device’s clock now says ${says}.`
        } If that is wrong, ${after}`
      : before - now <= dayMs
        ? `This device’s clock went back; it now says ${says}. ${order} If the date is wrong, ${after}`
        : `This device’s clock stood at ${stood} ${
            seen === "open" ? "until just now" : "when the logbook was last open"
          }. Now it says ${says}. ${order} If that is wrong, ${after}`;
  return { kind: "fault", about: "clock", text, actions: [] };
}
