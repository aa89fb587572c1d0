import { mean, type Numbers } from "#numbers";

/**
 * Autocorrelation at lag one, Σ(xᵢ − m)(xᵢ₊₁ − m) / Σ(xᵢ − m)², as in NIST's statistical reference datasets.
 * @returns undefined for fewer than two values or when all are equal
 * @throws RangeError for a value that is not finite
 * @example lag1Autocorrelation([1, 2, 3]) // 0
 */
export function lag1Autocorrelation(values: Numbers): number | undefined {
  const centre = mean(values);
  if (centre === undefined || values.length < 2) return undefined;
  let products = 0;
  let squares = 0;
  let before = 0;
  for (let i = 0; i < values.length; i++) {
    const deviation = (values[i] as number) - centre;
    products += before * deviation;
    squares += deviation * deviation;
    before = deviation;
  }
  return squares === 0 ? undefined : products / squares;
}
