import { type Figure, known, unknown } from "#domain";
import { CONFIDENCE } from "#numbers";
import { lapsForMedian } from "../pace/lapsForMedian.ts";
import { rankSumTest } from "../rigTests/rankSumTest.ts";
import type { Shift } from "./shift.ts";

const LEAST_SESSIONS = 5;

/** A shift between two periods, and the sessions on each side. */
export interface PeriodShift extends Shift {
  readonly sessions: number;
  readonly sessionsBefore: number;
}

/**
 * How far a figure of the sessions moved from the period before to this one: the rank-sum shift with its 90 % interval
 * (Hodges–Lehmann; Mann & Whitney 1947). The unit is the session, never the lap: laps of one session are alike.
 * @param now the figure of each session of the period
 * @param before the same for the period before
 * @returns a reason where either has fewer than five sessions
 */
export function periodShift(now: readonly number[], before: readonly number[]): Figure<PeriodShift> {
  const lacking = { needs: LEAST_SESSIONS, of: "session", each: lapsForMedian } as const;
  if (now.length < LEAST_SESSIONS) return unknown({ ...lacking, has: now.length });
  if (before.length < LEAST_SESSIONS) return unknown({ ...lacking, has: before.length, period: "before" });
  const test = rankSumTest(now, before, CONFIDENCE);
  const { estimate, low, high } = test ?? { estimate: 0, low: 0, high: 0 };
  return known({ estimate, low, high, sessions: now.length, sessionsBefore: before.length });
}
