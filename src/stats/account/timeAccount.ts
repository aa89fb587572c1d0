import { type Figure, known, type Remark, unknown } from "#domain";
import { mean, requireNumber, requireNumberAt } from "#numbers";
import { bestOfK } from "../pace/bestOfK.ts";
import { needs } from "../sample/needs.ts";

/** Pace laps a session needs for an account. */
export const LEAST_FOR_ACCOUNT = 5;
/** Laps in the "best of k", where there are as many. */
const BEST_OF = 10;

/** A lap as the time account needs it: `pace` says that it belongs to the pace laps; no `ms` means no time. */
export interface LapForAccount {
  readonly ms?: number | undefined;
  readonly remarks: readonly Remark[];
  readonly pace: boolean;
  /** The driver said: not my PB. */
  readonly isNotBest?: boolean | undefined;
}

/** The lines of a time account in whole ms, and what stands beside it. */
export interface TimeAccount {
  /** Best of k of the pace laps, against the target. */
  readonly pace: number;
  /** Mean of the pace laps, against the best of k. */
  readonly repeatability: number;
  /** What laps with an own mistake add to the mean. */
  readonly mistakes: number;
  /** What laps with traffic or a slow zone add to the mean. */
  readonly others: number;
  /** Mean of all these laps against the target: the sum of the four lines. */
  readonly balance: number;
  /** Laps in the account. */
  readonly laps: number;
  /** Laps that stay out because the track limits were cut. */
  readonly cutLaps: number;
  /** Laps that stay out because the driver took them back as a best: like a cut lap they may be faster. */
  readonly notBestLaps: number;
  /** Laps that stay out because they have no time. */
  readonly withoutTime: number;
  /** Sessions in the account. */
  readonly sessions: number;
  /** Sessions left out because they have too few pace laps. */
  readonly sessionsLeftOut: number;
}

/**
 * The time account: where the average lap's distance to a target goes. Over several sessions it is the mean of their
 * accounts weighted by their laps, never pooled, or improvement over the weeks would look like unevenness. The balance
 * and the cumulative steps are rounded and the lines are their differences, so they add up to the millisecond.
 * @param sessions for each session its laps, in any order
 * @param targetMs lap time to be measured against, or one for each session
 * @returns a reason where no session has five pace laps
 * @throws RangeError for a time or a target that is not finite, or as many targets as not sessions
 * @example timeAccount([laps of 84000, 84100, 84200, 84300, 84400], 83900) // pace 100, repeatability 200, balance 300
 */
export function timeAccount(
  sessions: readonly (readonly LapForAccount[])[],
  targetMs: number | readonly number[],
): Figure<TimeAccount> {
  const targets = typeof targetMs === "number" ? sessions.map(() => targetMs) : targetMs;
  if (targets.length !== sessions.length) {
    throw new RangeError(`targetMs has ${targets.length} targets for ${sessions.length} sessions`);
  }
  if (typeof targetMs === "number") requireNumber(targetMs, "targetMs");
  const accounts = sessions.map((laps, index) => stepsOf(laps, targets[index], index));
  const full = accounts.filter((account) => account.steps !== undefined);
  const laps = full.reduce((sum, account) => sum + account.laps, 0);
  if (laps === 0) {
    const most = Math.max(0, ...accounts.map((account) => account.paceLaps));
    const where = sessions.length > 1 ? " in its best session" : "";
    return unknown(`${needs(LEAST_FOR_ACCOUNT, "pace lap", most)}${where}`);
  }
  const weighted = (step: 0 | 1 | 2 | 3) =>
    Math.round(full.reduce((sum, account) => sum + (account.steps?.[step] ?? 0) * (account.laps / laps), 0));
  const [best, usual, withMistakes, balance] = [weighted(0), weighted(1), weighted(2), weighted(3)];
  return known({
    pace: best,
    repeatability: usual - best,
    mistakes: withMistakes - usual,
    others: balance - withMistakes,
    balance,
    laps,
    cutLaps: full.reduce((sum, account) => sum + account.cutLaps, 0),
    notBestLaps: full.reduce((sum, account) => sum + account.notBestLaps, 0),
    withoutTime: full.reduce((sum, account) => sum + account.withoutTime, 0),
    sessions: full.length,
    sessionsLeftOut: sessions.length - full.length,
  });
}

/** The cumulative steps of one session against its target; undefined with too few pace laps. */
function stepsOf(laps: readonly LapForAccount[], target: number | undefined, session: number) {
  requireNumber(target, `targetMs[${session}]`);
  const times = { pace: [] as number[], mistakes: [] as number[], others: [] as number[] };
  let cutLaps = 0;
  let notBestLaps = 0;
  let withoutTime = 0;
  const name = `ms of sessions[${session}]`;
  laps.forEach((lap, index) => {
    if (lap.ms !== undefined) requireNumberAt(lap.ms, name, index);
    const line = lineOf(lap);
    if (line === "without time") withoutTime++;
    else if (line === "cut") cutLaps++;
    else if (line === "not best") notBestLaps++;
    else if (line !== undefined) times[line].push(lap.ms as number);
  });
  const { pace, mistakes, others } = times;
  const counted = { cutLaps, notBestLaps, withoutTime, paceLaps: pace.length };
  const all = [...pace, ...mistakes, ...others];
  const best = bestOfK(pace, Math.min(BEST_OF, Math.max(1, pace.length)));
  const usual = mean(pace);
  const withMistakes = mean([...pace, ...mistakes]);
  const whole = mean(all);
  if (
    pace.length < LEAST_FOR_ACCOUNT ||
    best === undefined ||
    usual === undefined ||
    withMistakes === undefined ||
    whole === undefined
  ) {
    return { ...counted, steps: undefined, laps: 0 };
  }
  const steps = [best - target, usual - target, withMistakes - target, whole - target] as const;
  return { ...counted, steps, laps: all.length };
}

/** The line in which a lap is met first; undefined for a lap that has no part in the account. */
function lineOf({ ms, remarks, pace, isNotBest }: LapForAccount) {
  const has = (...kinds: Remark["kind"][]) => remarks.some((remark) => kinds.includes(remark.kind));
  if (has("out", "in")) return undefined;
  if (ms === undefined) return "without time";
  if (remarks.length > 0) {
    if (has("cut")) return "cut";
    if (has("off", "spin", "contact")) return "mistakes";
    if (has("traffic", "slow")) return "others";
  }
  if (!pace) return undefined;
  return isNotBest === true ? "not best" : "pace";
}
