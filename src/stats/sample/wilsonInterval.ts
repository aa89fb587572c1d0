import { normalQuantile, requireFraction } from "#numbers";

/** A share of trials with its interval, all fractions. */
export interface Share {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Share of successes with Wilson's score interval (Wilson 1927; method 3 of Newcombe 1998, without a continuity
 * correction).
 * @param successes whole number from 0 to `trials`
 * @param trials whole number from 0
 * @param confidence fraction, as 0.9
 * @returns undefined for no trials
 * @throws RangeError for counts that are not whole or not within each other, or a confidence outside 0 to 1
 * @example wilsonInterval(0, 20, 0.95)?.high // 0.1611…
 */
export function wilsonInterval(successes: number, trials: number, confidence: number): Share | undefined {
  requireFraction(confidence, "confidence");
  if (!Number.isInteger(trials) || trials < 0) {
    throw new RangeError(`trials is ${trials}: a whole number from 0 is needed`);
  }
  if (!Number.isInteger(successes) || successes < 0 || successes > trials) {
    throw new RangeError(`successes is ${successes}: a whole number from 0 to ${trials} is needed`);
  }
  if (trials === 0) return undefined;
  const share = successes / trials;
  const z = normalQuantile((1 + confidence) / 2);
  const shrink = 1 + (z * z) / trials;
  const centre = (share + (z * z) / (2 * trials)) / shrink;
  const reach = (z / shrink) * Math.sqrt((share * (1 - share)) / trials + (z / (2 * trials)) ** 2);
  return {
    share,
    low: successes === 0 ? 0 : centre - reach,
    high: successes === trials ? 1 : centre + reach,
  };
}
