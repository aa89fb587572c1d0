import type { LevelPosterior } from "./levelPosterior.ts";

/** How much one session tells, in ms. */
export interface TypicalError {
  /** Standard deviation of session medians about the level. */
  readonly typicalError: number;
  /** Smallest change of the level worth talking about. */
  readonly worthwhile: number;
}

/** Share of the lap under which no change is worth talking about. */
export const leastWorthwhile = 0.001;
/** Share of the spread from evening to evening. */
export const OF_SPREAD = 0.2;

/**
 * How far a single session lies from the level, and the smallest change worth talking about: a fifth of that spread, at
 * least 0.1 % of the lap (Hopkins 2000, "Measures of reliability in sports medicine and science"). Our methods, §5.
 * The spread is the root of the posterior mean of σ².
 */
export function typicalError({ weights, spreads, grid, series }: LevelPosterior): TypicalError {
  const variance = weights.reduce(
    (sum, weight, cell) => sum + weight * (grid.spreads[spreads[cell] as number]?.variance ?? 0),
    0,
  );
  const error = series.usual * Math.sqrt(variance);
  return { typicalError: error, worthwhile: Math.max(OF_SPREAD * error, leastWorthwhile * series.usual) };
}
