/** An axis: where it begins and ends, where its few lines lie, and the decimals they need. */
export interface Axis {
  readonly domain: readonly [number, number];
  readonly ticks: readonly number[];
  readonly decimals: number;
}

/**
 * An axis over the values with ticks at multiples of the smallest allowed step that needs no more ticks than wanted.
 * @param steps allowed steps, rising
 * @param wanted most ticks, 2 or more
 * @param decimalsOf decimals a step needs to be written exactly
 */
export function niceAxis(
  values: readonly number[],
  steps: readonly number[],
  wanted: number,
  decimalsOf: (step: number) => number,
): Axis {
  const low = values.length === 0 ? 0 : values.reduce((a, b) => Math.min(a, b));
  const high = values.length === 0 ? 1 : values.reduce((a, b) => Math.max(a, b));
  const fits = (step: number) => Math.ceil(high / step) - Math.floor(low / step) <= wanted - 1;
  const step = steps.find(fits) ?? roughStep(high - low, wanted);
  const first = Math.floor(low / step);
  const last = Math.max(Math.ceil(high / step), first + 1);
  const ticks = Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
  return { domain: [first * step, last * step], ticks, decimals: decimalsOf(step) };
}

/** For ranges beyond the list: a power of ten times one, two or five. */
function roughStep(range: number, wanted: number): number {
  const least = Math.max(range, 1) / Math.max(1, wanted - 2);
  const power = 10 ** Math.floor(Math.log10(least));
  return ([1, 2, 5].find((factor) => factor * power >= least) ?? 10) * power;
}
