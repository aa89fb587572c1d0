import type { Band } from "../weeks/bands.ts";
import { levelAfter } from "./levelKnown.ts";
import type { LevelModel } from "./levelModel.ts";
import { condensed, mixtureQuantile } from "./normalMixture.ts";

/** Quantiles of a drawn curve need not be known better than to this share. */
const PRECISION = 1e-3;

/** The level at each session the model was made from, its oldest ones left out, in ms, with 50 and 90 % bands. */
export function levelCurve({ posterior, levels }: LevelModel): Band[] {
  const { weights, series } = posterior;
  const cells = weights.length;
  return Array.from({ length: series.count }, (_, session) => {
    // The last is said in digits beside the curve, and must be the same there.
    if (session === series.count - 1) return levelAfter(posterior);
    const own = (all: Float64Array) => all.subarray(cells * session, cells * (session + 1));
    const mixture = condensed({
      weights,
      means: own(levels.means),
      deviations: own(levels.variances).map((variance) => Math.sqrt(variance)),
    });
    const ms = (share: number) => series.usual * (1 + mixtureQuantile(mixture, share, PRECISION));
    return { low: ms(0.05), lowHalf: ms(0.25), mid: ms(0.5), highHalf: ms(0.75), high: ms(0.95) };
  });
}
