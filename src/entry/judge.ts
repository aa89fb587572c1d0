import { formatLapTime, formatPercent, leastForSpread } from "#domain";
import { medianAbsoluteDeviationOfSorted } from "#numbers";
import type { TypedLap } from "./context.ts";
import type { Ground } from "./grounds.ts";

const farOff = 0.1;
const farOffDeviations = 6;
/** Six times the scatter of an uneven driver, 4 % of a lap, where there are too few laps to know it. No source. */
const farOffFew = 0.25;

/** What is odd about a lap, said without what to do about it. */
export interface Oddity {
  readonly why: "far over usual" | "far from usual";
  readonly fact: string;
}

/**
 * Whether a lap lies beyond the usual. One without a remark: over laps of its own kind by more than 6 scaled median
 * absolute deviations and a tenth (a quarter where under five laps are known), and near neither of two laps far apart. Any
 * lap: beyond 3 times the usual, or under a third of it; of a layout's length or of any circuit beyond what can be driven.
 * @returns undefined for a lap without a time, or one like the others
 */
export function judge({ ms, decimals = 3, remarks }: TypedLap, ground: Ground): Oddity | undefined {
  if (ms === undefined) return undefined;
  const shown = formatLapTime(ms, decimals);
  const { name, fastest, slowest, own } = ground;
  if (ms < ground.under || ms > ground.over) {
    const isOver = ms > ground.over;
    const times = formatLapTime(isOver ? slowest : fastest, decimals);
    const fact =
      ground.under === fastest
        ? `${shown} is far ${isOver ? "longer" : "shorter"} than ${name} take.`
        : `${shown} is ${isOver ? "more than 3 times" : "under a third of"} ${name}, ${times}.`;
    return { why: "far from usual", fact };
  }
  if (own === undefined || remarks.length > 0) return undefined;
  if (!isFar(over, ms, fastest, own) || isLikeSlower(ms, ground)) return undefined;
  return { why: "far over usual", fact: sayFar(over, ms, decimals, ground) };
}

/**
 * The same for a lap of a table, which nobody was asked about as it was typed: no question about a PB went before, so one
 * without a remark may lie no further under laps of its own kind than over them. Weeks of progress are not odd for that: a
 * table's lap is judged by its own session.
 * @returns what is odd about it; undefined where nothing is
 */
export function factOfWritten(lap: TypedLap, ground: Ground): string | undefined {
  const { ms, decimals = 3, remarks } = lap;
  const { fastest, own } = ground;
  const found = judge(lap, ground)?.fact;
  if (found !== undefined || ms === undefined || own === undefined || remarks.length > 0) return found;
  return isFar(under, ms, fastest, own) ? sayFar(under, ms, decimals, ground) : undefined;
}

/** Slower than usual, and faster. */
const over = { word: "over", sign: 1 } as const;
const under = { word: "under", sign: -1 } as const;
type Side = typeof over | typeof under;

function isFar({ sign }: Side, ms: number, usual: number, own: readonly number[]): boolean {
  if (sign * (ms - usual * (1 + sign * farOff)) < 0) return false;
  const deviation = own.length < leastForSpread ? undefined : medianAbsoluteDeviationOfSorted(own);
  const limit =
    deviation === undefined ? usual * (1 + sign * farOffFew) : usual + sign * farOffDeviations * deviation;
  return sign * (ms - limit) > 0;
}

function sayFar({ word, sign }: Side, ms: number, decimals: number, ground: Ground): string {
  const share = formatPercent((sign * (ms - ground.fastest)) / ground.fastest);
  return `${formatLapTime(ms, decimals)} is ${share} ${word} ${saidWith(ground, decimals)} and has no remark.`;
}

/** Whether a lap is near the slower of two that lie so far apart that either may be the slip. */
function isLikeSlower(ms: number, { fastest, slowest }: Ground): boolean {
  const reach = 1 + farOffFew;
  return slowest > fastest * reach && ms >= slowest / reach && ms <= slowest * reach;
}

/** A PB of one time is named with it; the usual of many laps stands for itself. */
function saidWith({ name, fastest, own = [] }: Ground, decimals: number): string {
  return own.length === 1 ? `${name}, ${formatLapTime(fastest, decimals)},` : name;
}
