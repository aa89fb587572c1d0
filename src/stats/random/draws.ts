import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import { normalQuantile } from "#numbers";
import { stream } from "./stream.ts";

/** Half of the last step, so that neither 0 nor 1 is ever drawn. */
const HALF_STEP = 2 ** -54;

/** The next number of a stream above 0 and below 1. */
export function nextUniform(source: RandomGenerator): number {
  return Math.min(uniformFloat64(source) + HALF_STEP, 1 - 2 ** -53);
}

/** The next standard normal number of a stream, by its quantile: one number drawn, one used. */
export function nextNormal(source: RandomGenerator): number {
  return normalQuantile(nextUniform(source));
}

/**
 * The next chi-squared number of a stream (Marsaglia & Tsang 2000, "A simple method for generating gamma variables").
 * @param degreesOfFreedom above 0
 */
export function nextChiSquared(source: RandomGenerator, degreesOfFreedom: number): number {
  const shape = degreesOfFreedom / 2;
  const lift = shape < 1 ? nextUniform(source) ** (1 / shape) : 1;
  const d = (shape < 1 ? shape + 1 : shape) - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = nextNormal(source);
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    if (Math.log(nextUniform(source)) < 0.5 * x * x + d - d * v + d * Math.log(v)) return 2 * d * v * lift;
  }
}

/** A number above 0 and below 1 that belongs to a seed and keys. */
export function uniformAt(seed: number, ...keys: readonly number[]): number {
  return nextUniform(stream(seed, ...keys));
}

/** A standard normal number that belongs to a seed and keys. */
export function normalAt(seed: number, ...keys: readonly number[]): number {
  return nextNormal(stream(seed, ...keys));
}

/**
 * A chi-squared number that belongs to a seed and keys.
 * @param degreesOfFreedom above 0
 */
export function chiSquaredAt(degreesOfFreedom: number, seed: number, ...keys: readonly number[]): number {
  return nextChiSquared(stream(seed, ...keys), degreesOfFreedom);
}
