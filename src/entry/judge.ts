import { formatLapTime, formatPercent } from "#domain";
import type { TypedLap } from "./context.ts";
import type { Ground } from "./grounds.ts";
import { scaledDeviation } from "./usual.ts";

const farOver = 0.1;
const farOverDeviations = 6;
/** Six times the scatter of an uneven driver, 4 % of a lap, where there are too few laps to know it. No source. */
const farOverFew = 0.25;

/** What is odd about a lap, said without what to do about it. */
export interface Oddity {
  readonly why: "far over usual" | "far from usual";
  readonly fact: string;
}

/**
 * Whether a lap lies beyond the usual. One without a remark: over laps of its own kind by more than 6 scaled median
 * absolute deviations and a tenth (a quarter where under five laps are known), and near neither of two laps far apart. Any lap: beyond 3 times the usual, or
 * under a third of it; of a layout's length or of any circuit beyond what can be driven.
 * @returns undefined for a lap without a time, or one like the others
 */
export function judge({ ms, decimals = 3, remarks }: TypedLap, ground: Ground): Oddity | undefined {
  if (ms === undefined) return undefined;
  const shown = formatLapTime(ms, decimals);
  const { name, fastest, slowest, under, over, own } = ground;
  if (ms < under || ms > over) {
    const isOver = ms > over;
    const times = formatLapTime(isOver ? slowest : fastest, decimals);
    const fact =
      under === fastest
        ? `${shown} is far ${isOver ? "longer" : "shorter"} than ${name} take.`
        : `${shown} is ${isOver ? "more than 3 times" : "under a third of"} ${name}, ${times}.`;
    return { why: "far from usual", fact };
  }
  if (own === undefined || remarks.length > 0 || !isFarOver(ms, fastest, own) || isLikeSlower(ms, ground))
    return undefined;
  const share = formatPercent((ms - fastest) / fastest);
  return {
    why: "far over usual",
    fact: `${shown} is ${share} over ${saidWith(ground, decimals)} and has no remark.`,
  };
}

/**
 * The same for a lap that nobody is asked about as it is typed, because it stands in a table: no question about a PB goes
 * before, so one without a remark may lie as little under laps of its own kind as over them. Weeks of progress do not:
 * a table's lap is judged by its own session.
 * @returns what is odd about it; undefined where nothing is
 */
export function factOfWritten(lap: TypedLap, ground: Ground): string | undefined {
  const { ms, decimals = 3, remarks } = lap;
  const { fastest, own } = ground;
  const found = judge(lap, ground)?.fact;
  if (found !== undefined || ms === undefined || own === undefined || remarks.length > 0) return found;
  if (!isFarUnder(ms, fastest, own)) return undefined;
  const share = formatPercent((fastest - ms) / fastest);
  return `${formatLapTime(ms, decimals)} is ${share} under ${saidWith(ground, decimals)} and has no remark.`;
}

function isFarUnder(ms: number, usual: number, own: readonly number[]): boolean {
  if (ms > usual * (1 - farOver)) return false;
  const deviation = scaledDeviation(own);
  return deviation === undefined ? ms < usual * (1 - farOverFew) : ms < usual - farOverDeviations * deviation;
}

function isFarOver(ms: number, usual: number, own: readonly number[]): boolean {
  if (ms < usual * (1 + farOver)) return false;
  const deviation = scaledDeviation(own);
  return deviation === undefined ? ms > usual * (1 + farOverFew) : ms > usual + farOverDeviations * deviation;
}

/** Whether a lap is near the slower of two that lie so far apart that either may be the slip. */
function isLikeSlower(ms: number, { fastest, slowest }: Ground): boolean {
  const reach = 1 + farOverFew;
  return slowest > fastest * reach && ms >= slowest / reach && ms <= slowest * reach;
}

/** A PB of one time is named with it; the usual of many laps stands for itself. */
function saidWith({ name, fastest, own = [] }: Ground, decimals: number): string {
  return own.length === 1 ? `${name}, ${formatLapTime(fastest, decimals)},` : name;
}
