import { type Figure, known, placeOfLap, type Remark, unknown } from "#domain";
import { requireNumber } from "#numbers";
import {
  type AccountLines,
  type AccountSteps,
  accountSteps,
  type LapInAccount,
  LEAST_FOR_ACCOUNT,
} from "./accountSteps.ts";
import { type OddPart, oddParts } from "./oddParts.ts";

/** A lap as the time account needs it: `pace` says that it belongs to the pace laps; no `ms` means no time. */
export interface LapForAccount {
  readonly ms?: number | undefined;
  readonly remarks: readonly Remark[];
  readonly pace: boolean;
  /** The driver said: not my PB. */
  readonly isNotBest?: boolean | undefined;
  /** The driver confirmed it as far beyond the usual. */
  readonly isOdd?: boolean | undefined;
}

/** A time account, and what stands beside it. */
export interface TimeAccount extends AccountLines {
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
  /**
   * The lines that laps confirmed as odd make most of, and the account without any such lap, where enough are left;
   * undefined where they make most of none.
   */
  readonly odd?:
    | { readonly parts: readonly OddPart[]; readonly without: AccountLines | undefined }
    | undefined;
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
  return accountOfLaps(
    sessions.map((laps) => laps.map(inPlace)),
    targetMs,
  );
}

function inPlace(lap: LapForAccount): LapInAccount {
  const { ms, pace, isNotBest, isOdd } = lap;
  const place = placeOfLap(lap) ?? (pace ? "pace" : "settling");
  return { ms, place, isNotBest: isNotBest === true, isOdd: isOdd === true };
}

/** The same of laps that have their places already. */
export function accountOfLaps(sessions: Sessions, targetMs: number | readonly number[]): Figure<TimeAccount> {
  return accountsOfLaps(sessions, targetMs).whole;
}

/** The account of sessions together, and of each alone. */
export function accountsOfLaps(
  sessions: Sessions,
  targetMs: number | readonly number[],
): { readonly whole: Figure<TimeAccount>; readonly each: readonly Figure<TimeAccount>[] } {
  const targets = typeof targetMs === "number" ? sessions.map(() => targetMs) : targetMs;
  if (targets.length !== sessions.length) {
    throw new RangeError(`targetMs has ${targets.length} targets for ${sessions.length} sessions`);
  }
  if (typeof targetMs === "number") requireNumber(targetMs, "targetMs");
  const stepped = sessions.map((laps, index): SteppedSession => {
    const target = targets[index];
    return { laps, target, account: accountSteps(laps, target, index, LEAST_FOR_ACCOUNT) };
  });
  return { whole: accountOf(stepped), each: stepped.map((session) => accountOf([session])) };
}

type Sessions = readonly (readonly LapInAccount[])[];

interface SteppedSession {
  readonly laps: readonly LapInAccount[];
  readonly target: number | undefined;
  readonly account: AccountSteps;
}

function accountOf(sessions: readonly SteppedSession[]): Figure<TimeAccount> {
  const full = sessions.filter(({ account }) => account.steps !== undefined);
  const accounts = full.map(({ account }) => account);
  const lines = linesOf(accounts);
  if (lines === undefined) {
    const most = Math.max(0, ...sessions.map(({ account }) => account.paceLaps));
    const where = sessions.length > 1 ? ({ where: "in the best session" } as const) : {};
    return unknown({ needs: LEAST_FOR_ACCOUNT, of: "pace lap", has: most, ...where });
  }
  const sum = (field: "laps" | "cutLaps" | "notBestLaps" | "withoutTime") =>
    accounts.reduce((total, account) => total + account[field], 0);
  return known({
    ...lines,
    laps: sum("laps"),
    cutLaps: sum("cutLaps"),
    notBestLaps: sum("notBestLaps"),
    withoutTime: sum("withoutTime"),
    sessions: full.length,
    sessionsLeftOut: sessions.length - full.length,
    odd: oddOf(full, lines),
  });
}

/** The lines of sessions together, weighted by their laps; undefined without any. */
function linesOf(accounts: readonly AccountSteps[]): AccountLines | undefined {
  const laps = accounts.reduce((sum, account) => sum + account.laps, 0);
  if (laps === 0) return undefined;
  const weighted = (step: 0 | 1 | 2 | 3) =>
    Math.round(
      accounts.reduce((sum, account) => sum + (account.steps?.[step] ?? 0) * (account.laps / laps), 0),
    );
  const [best, usual, withMistakes, balance] = [weighted(0), weighted(1), weighted(2), weighted(3)];
  return {
    pace: best,
    repeatability: usual - best,
    mistakes: withMistakes - usual,
    others: balance - withMistakes,
    balance,
  };
}

/** What the laps confirmed as odd did to the account of these sessions. */
function oddOf(sessions: readonly SteppedSession[], account: AccountLines): TimeAccount["odd"] {
  if (sessions.every(({ account: { oddLaps } }) => oddLaps === 0)) return undefined;
  const odd = sessions.flatMap(({ laps }) => laps.filter((lap) => lap.isOdd));
  const rest = sessions.map(({ laps, target }) => ({ laps: laps.filter((lap) => !lap.isOdd), target }));
  const linesFrom = (least: number) =>
    linesOf(rest.map(({ laps, target }, index) => accountSteps(laps, target, index, least)));
  // Their share is told from one pace lap up: it is of the account with them, which has enough.
  const same = linesFrom(1);
  const parts = same === undefined ? [] : oddParts(odd, account, same);
  return parts.length === 0 ? undefined : { parts, without: linesFrom(LEAST_FOR_ACCOUNT) };
}
