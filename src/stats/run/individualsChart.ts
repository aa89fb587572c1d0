import { mean, type Numbers, requireFinite } from "#numbers";

/** Laps in a row on one side of the centre that are pointed at. */
const IN_A_ROW = 8;
/** d₂ for moving ranges of two values, as printed in the handbook. */
const D2 = 1.128;

/** An individuals chart; `outside` and `sameSide` are indices into the values. */
export interface IndividualsChart {
  readonly centre: number;
  readonly sigma: number;
  readonly lower: number;
  readonly upper: number;
  /** Values outside the limits. */
  readonly outside: readonly number[];
  /** Values that are the eighth or a later one in a row on one side of the centre. */
  readonly sameSide: readonly number[];
}

/**
 * Individuals control chart: centre = mean, sigma = mean moving range / 1.128, limits ± 3 sigma (NIST/SEMATECH
 * e-Handbook 6.3.2.2).
 * @param values in the order in which they came
 * @returns undefined for fewer than two values
 * @throws RangeError for a value that is not finite
 * @example individualsChart([1, 2, 1, 2])?.centre // 1.5
 */
export function individualsChart(values: Numbers): IndividualsChart | undefined {
  requireFinite(values);
  const centre = mean(values);
  if (centre === undefined || values.length < 2) return undefined;
  let ranges = 0;
  for (let i = 1; i < values.length; i++)
    ranges += Math.abs((values[i] as number) - (values[i - 1] as number));
  const sigma = ranges / (values.length - 1) / D2;
  const lower = centre - 3 * sigma;
  const upper = centre + 3 * sigma;
  const outside: number[] = [];
  const sameSide: number[] = [];
  let side = 0;
  let row = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (value < lower || value > upper) outside.push(i);
    const here = Math.sign(value - centre);
    row = here !== 0 && here === side ? row + 1 : Math.abs(here);
    side = here;
    if (row >= IN_A_ROW) sameSide.push(i);
  }
  return { centre, sigma, lower, upper, outside, sameSide };
}
