import type { Numbers } from "#numbers";
import { summary } from "../sample/summary.ts";

const MOST_BINS = 18;
const FAR_OUT = 3;
const LEAST_SPREAD = 100;
const BIN_WIDTHS = [10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 60_000, 300_000];

/** How many laps lie from one time to under another, ms. */
export interface LapBin {
  readonly from: number;
  readonly to: number;
  readonly now: number;
  readonly before: number;
}

/** The laps of one period: how many, and their quartiles, ms. */
export interface LapQuarters {
  readonly laps: number;
  readonly lowerQuartile: number;
  readonly median: number;
  readonly upperQuartile: number;
  /** Laps slower than the last bin. */
  readonly slower: number;
}

/** Laps of two periods counted in the same bins; a period without laps is absent. */
export interface LapDistribution {
  readonly bins: readonly LapBin[];
  readonly now: LapQuarters | undefined;
  readonly before: LapQuarters | undefined;
}

/**
 * Counts the laps of two periods in at most 19 bins of one round width. What lies farther above the upper quartile than
 * three times the quartiles' distance would press all else together, so it is counted apart, as slower.
 * @param now lap times, ms, in any order
 * @param before the same of the period before, may be empty
 * @returns no bins without laps; bins and slower laps add up to the laps
 * @throws RangeError for a time that is not finite
 * @example lapDistribution([84000, 84005, 84012], []).bins // 84000 to 84010: 2, to 84020: 1
 */
export function lapDistribution(now: Numbers, before: Numbers): LapDistribution {
  const all = Float64Array.from([...Array.from(now), ...Array.from(before)]);
  const whole = summary(all);
  if (whole === undefined) return { bins: [], now: undefined, before: undefined };
  const { lowerQuartile, upperQuartile } = whole;
  const limit = upperQuartile + FAR_OUT * Math.max(LEAST_SPREAD, upperQuartile - lowerQuartile);
  const [first, last] = [
    all.reduce((a, b) => Math.min(a, b)),
    all.reduce((a, b) => (b <= limit ? Math.max(a, b) : a), 0),
  ];
  const width = BIN_WIDTHS.find((size) => (last - first) / size <= MOST_BINS) ?? last - first;
  const start = Math.floor(first / width) * width;
  const count = Math.floor((last - start) / width) + 1;
  const here = counted(now, start, width, count);
  const there = counted(before, start, width, count);
  const bins = here.bins.map((laps, bin) => ({
    from: start + bin * width,
    to: start + (bin + 1) * width,
    now: laps,
    before: there.bins[bin] ?? 0,
  }));
  return { bins, now: quartersOf(now, here.slower), before: quartersOf(before, there.slower) };
}

function counted(times: Numbers, start: number, width: number, count: number) {
  const bins = new Array<number>(count).fill(0);
  let slower = 0;
  for (let i = 0; i < times.length; i++) {
    const bin = Math.floor(((times[i] as number) - start) / width);
    if (bin < count) bins[bin] = (bins[bin] as number) + 1;
    else slower++;
  }
  return { bins, slower };
}

function quartersOf(times: Numbers, slower: number): LapQuarters | undefined {
  const found = summary(times);
  if (found === undefined) return undefined;
  const { count, lowerQuartile, median, upperQuartile } = found;
  return { laps: count, lowerQuartile, median, upperQuartile, slower };
}
