import { nextChiSquared, nextNormal } from "../random/draws.ts";
import { stream } from "../random/stream.ts";
import { mean } from "../sample/mean.ts";
import type { PastSession } from "../weeks/history.ts";

const priorDegrees = 3;
const priorScale = 0.003;

/** Keys that keep these random numbers apart from those of the practice curve. */
const gapKey = -1;

/**
 * Draws of best lap less median in sessions to come, in ms, at most 0: normal about the mean of the past sessions,
 * with a scaled inverse-χ² prior of 3 degrees of freedom and scale 0.3 % of the usual lap. Our methods, §6.
 * Random numbers belong to (seed, draw, session).
 * @returns one array of draws for each of `sessions`
 */
export function bestGaps(
  history: readonly PastSession[],
  usual: number,
  sessions: number,
  seed: number,
  draws: number,
): Float64Array[] {
  const gaps = history.map((session) => session.bestMs - session.medianMs);
  const centre = mean(gaps) ?? 0;
  const sumOfSquares =
    priorDegrees * (priorScale * usual) ** 2 + gaps.reduce((sum, gap) => sum + (gap - centre) ** 2, 0);
  const degreesOfFreedom = priorDegrees + gaps.length - 1;
  const drawn = Array.from({ length: sessions }, () => new Float64Array(draws));
  for (let draw = 0; draw < draws; draw++) {
    const source = stream(seed, gapKey, draw);
    const sigma = Math.sqrt(sumOfSquares / nextChiSquared(source, degreesOfFreedom));
    const usualGap = centre + (sigma / Math.sqrt(gaps.length)) * nextNormal(source);
    drawn.forEach((values, session) => {
      const shift = sigma * nextNormal(stream(seed, gapKey, draw, session));
      values[draw] = Math.min(0, usualGap + shift);
    });
  }
  return drawn;
}
