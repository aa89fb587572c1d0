import { VERY_LIKELY } from "#stats";

/** How sure a direction is. There are no other words for it; too few data are "cannot be told yet". */
export type Certainty = "very likely" | "likely" | "may be chance";

const LIKELY = 0.9;

/**
 * How sure it is which way something went: very likely where the 90 % interval lies wholly on one side, likely where the
 * 80 % interval does.
 * @param chance that it went one way, 0 to 1
 */
export function certaintyOf(chance: number): Certainty {
  const surer = Math.max(chance, 1 - chance);
  return surer >= VERY_LIKELY ? "very likely" : surer >= LIKELY ? "likely" : "may be chance";
}

/** The words for a number of chances in twenty, up to each bound. Beyond the last it is very likely. */
const likelihoods = [
  [2, "very unlikely"],
  [4, "unlikely"],
  [8, "less likely than not"],
  [11, "as likely as not"],
  [15, "more likely than not"],
  [17, "likely"],
] as const;

/** How likely something to come is. */
export type Likelihood = (typeof likelihoods)[number][1] | "very likely";

/**
 * The word for a chance, counted in twenty: very likely from 18 chances on, very unlikely up to 2.
 * @param chance fraction from 0 to 1
 */
export function likelihoodOf(chance: number): Likelihood {
  const inTwenty = Math.round(chance * 20);
  return likelihoods.find(([bound]) => inTwenty <= bound)?.[1] ?? "very likely";
}
