import { requireFraction } from "#numbers";
import type { LevelModel } from "./levelModel.ts";
import { endOf } from "./levelPosterior.ts";
import { mixtureBelow, mixtureQuantile, type NormalMixture } from "./normalMixture.ts";

/** How far a level has moved, in ms; below 0 is faster. */
export interface ChangeOfLevel {
  readonly change: number;
  readonly low: number;
  readonly high: number;
  /** Probability that it is faster now; half of "exactly the same" counts as faster. */
  readonly chanceFaster: number;
}

/** A difference whose variance is this part of that of the last level is none: the driver was still all along. */
const NO_VARIANCE = 1e-9;

/**
 * Median, interval and chance of the change of level from a session to the last one: the one answer to "how much faster
 * than then". Our methods, §5.
 * @param since number of the session in the list the model was made from; one older than its first counts as that one
 * @param confidence of the interval, a fraction
 * @throws RangeError for a session that is not in the list, or a confidence outside 0 to 1
 */
export function changeOfLevel(model: LevelModel, since: number, confidence = 0.9): ChangeOfLevel {
  const { usual, from, count } = model.posterior.series;
  if (!Number.isInteger(since) || since < 0 || since >= from + count)
    throw new RangeError(`since is ${since}: a whole number from 0 to ${from + count - 1} is needed`);
  requireFraction(confidence, "confidence");
  const mixture = difference(model, Math.max(0, since - from));
  const inMs = (share: number) => usual * mixtureQuantile(mixture, share);
  return {
    change: inMs(0.5),
    low: inMs((1 - confidence) / 2),
    high: inMs((1 + confidence) / 2),
    chanceFaster: mixtureBelow(mixture, 0, 0.5),
  };
}

/** Level after the last session less that of an earlier one, as shares of the lap. */
function difference({ posterior, levels }: LevelModel, since: number): NormalMixture {
  const { weights, series } = posterior;
  const cells = weights.length;
  const means = new Float64Array(cells);
  const deviations = new Float64Array(cells);
  for (let cell = 0; cell < cells; cell++) {
    const then = cells * since + cell;
    const last = cells * (series.count - 1) + cell;
    const now = endOf(posterior, cell, "ll");
    const variance = now + (levels.variances[then] as number) - 2 * (levels.withLast[then] as number);
    if (variance <= NO_VARIANCE * now) continue;
    means[cell] = (levels.means[last] as number) - (levels.means[then] as number);
    deviations[cell] = Math.sqrt(variance);
  }
  return { weights, means, deviations };
}
