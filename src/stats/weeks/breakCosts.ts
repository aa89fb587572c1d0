import { type CalendarDate, type Figure, known, unknown } from "#domain";
import { CONFIDENCE, mean, standardDeviation } from "#numbers";
import { tInterval } from "../rigTests/tInterval.ts";
import { BREAK_DAYS, type DrivenDays, longestPause } from "./longestPause.ts";

const LEAST_NEIGHBOURS = 4;

/** A session as breaks are judged by. */
export interface DatedMedian extends DrivenDays {
  readonly medianMs: number;
  readonly laps: number;
}

/** What the first session after a break lost, ms, against what neighbouring sessions usually differ by. */
export interface BreakCost {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly days: number;
  readonly cost: Figure<{ readonly estimate: number; readonly low: number; readonly high: number }>;
  /** Laps from the break to the end of the first session as fast as the one before it; undefined if there is none. */
  readonly lapsUntilBack: number | undefined;
}

/**
 * Breaks of ten days or more between sessions, and what each cost: the step in the usual lap over the break, less the
 * mean step of ordinary neighbours, so that learning is not counted. The interval is that of one new observation
 * against a sample: t·s·√(1 + 1/n).
 * @param sessions of one page with a median, oldest first
 * @returns in time order; a cost needs four ordinary steps, and steps that differ
 */
export function breakCosts(sessions: readonly DatedMedian[]): BreakCost[] {
  const steps = sessions.slice(1).map((after, index) => {
    const before = sessions[index] as DatedMedian;
    return {
      before,
      after,
      at: index + 1,
      pause: longestPause(before, after.date),
      ms: after.medianMs - before.medianMs,
    };
  });
  const ordinary = steps.filter(({ pause }) => pause.days < BREAK_DAYS).map(({ ms }) => ms);
  return steps
    .filter(({ pause }) => pause.days >= BREAK_DAYS)
    .map(({ before, at, pause, ms }) => ({
      ...pause,
      cost: costOf(ms, ordinary),
      lapsUntilBack: lapsUntilBack(sessions.slice(at), before.medianMs),
    }));
}

function costOf(step: number, ordinary: readonly number[]): BreakCost["cost"] {
  const n = ordinary.length;
  const [usual, deviation] = [mean(ordinary), standardDeviation(ordinary)];
  if (n < LEAST_NEIGHBOURS || usual === undefined || deviation === undefined)
    return unknown({ needs: LEAST_NEIGHBOURS, of: "step of neighbouring sessions", has: n });
  if (deviation === 0) return unknown({ because: "sessions that do not differ" });
  const { estimate, low, high } = tInterval(
    step - usual,
    deviation * Math.sqrt(1 + 1 / n),
    n - 1,
    CONFIDENCE,
  );
  return known({ estimate, low, high });
}

function lapsUntilBack(after: readonly DatedMedian[], level: number): number | undefined {
  let laps = 0;
  for (const session of after) {
    laps += session.laps;
    if (session.medianMs <= level) return laps;
  }
  return undefined;
}
