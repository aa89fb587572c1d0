import type { Band } from "../weeks/bands.ts";
import type { LevelModel } from "./levelModel.ts";
import { mixtureQuantile, type NormalMixture } from "./normalMixture.ts";

/** The bands of a drawn curve need not be known better than to this share; the level itself is said in digits elsewhere. */
const PRECISION = 1e-4;

/** The level at each session the model was made from, its oldest ones left out, in ms, with 50 and 90 % bands. */
export function levelCurve({ posterior, levels }: LevelModel): Band[] {
  const { weights, series } = posterior;
  const cells = weights.length;
  return Array.from({ length: series.count }, (_, session) => {
    const own = (all: Float64Array) => all.subarray(cells * session, cells * (session + 1));
    const mixture: NormalMixture = {
      weights,
      means: own(levels.means),
      deviations: own(levels.variances).map((variance) => Math.sqrt(Math.max(0, variance))),
    };
    const ms = (share: number, precision?: number) =>
      series.usual * (1 + mixtureQuantile(mixture, share, precision));
    const band = (share: number) => ms(share, PRECISION);
    return { low: band(0.05), lowHalf: band(0.25), mid: ms(0.5), highHalf: band(0.75), high: band(0.95) };
  });
}
