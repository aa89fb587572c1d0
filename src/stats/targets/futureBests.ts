import { nextChiSquared, nextNormal } from "../random/draws.ts";
import { stream } from "../random/stream.ts";
import type { CurveDraws } from "../weeks/curveDraws.ts";
import type { PastSession } from "../weeks/history.ts";

const priorDegrees = 3;
const priorScale = 0.0015;

/** A key that keeps these random numbers apart from those of the practice curve. */
const bestKey = -1;

/**
 * Draws of the best lap of each session to come, in ms, at most its median. For each drawn curve the past bests lie
 * about it at a mean distance and with a scatter of their own (normal, scaled inverse-χ² prior with 3 degrees of
 * freedom and scale 0.15 % of the usual lap), and so do those to come. Our methods, §6.
 *
 * The scatter of bests about the curve is used instead of that of medians and that of (best less median) on top of
 * each other: what lifts a median by chance widens the gap to a best lap that it does not touch, so adding both
 * counts it twice, and six sessions then reach too much.
 *
 * Each draw has its own stream of random numbers, used in the order of the sessions.
 */
export function futureBests(
  history: readonly PastSession[],
  usual: number,
  { levels, medians }: CurveDraws,
  seed: number,
): Float64Array[] {
  const sessions = history.length;
  const prior = priorDegrees * (priorScale * usual) ** 2;
  const bests = medians.map((values) => new Float64Array(values.length));
  for (let draw = 0; draw < (medians[0]?.length ?? 0); draw++) {
    let distance = 0;
    let squares = 0;
    for (let i = 0; i < sessions; i++) {
      const off = (history[i]?.bestMs ?? 0) - (levels[i]?.[draw] ?? 0) - distance;
      distance += off / (i + 1);
      squares += (off * off * i) / (i + 1);
    }
    const source = stream(seed, bestKey, draw);
    const sigma = Math.sqrt((prior + squares) / nextChiSquared(source, priorDegrees + sessions - 1));
    distance += (sigma / Math.sqrt(sessions)) * nextNormal(source);
    for (const [k, values] of bests.entries()) {
      const best = (levels[sessions + k]?.[draw] ?? 0) + distance + sigma * nextNormal(source);
      values[draw] = Math.min(best, medians[k]?.[draw] ?? best);
    }
  }
  return bests;
}
