import type { Lap, Run } from "#domain";

/** The season's rows read in the plainest way, without the app's own figures: what those are checked against. */
export interface PlainBest {
  readonly lapId: string;
  readonly ms: number;
}

/** Remarks that do not fit a lap that counts. Written out here once more on purpose. */
const spoiling = ["out", "in", "cut", "off", "spin", "contact", "traffic", "slow"];

function isPlain(lap: Lap): lap is Lap & { readonly ms: number } {
  return (
    lap.ms !== undefined &&
    lap.deletedAt === undefined &&
    !lap.remarks.some(({ kind }) => spoiling.includes(kind))
  );
}

/** Fastest lap that nothing spoils; a time known to tenths only counts for its slowest possible value. */
export function plainBest(runs: readonly Run[]): PlainBest | undefined {
  let best: (PlainBest & { readonly slowest: number }) | undefined;
  for (const run of runs) {
    if (run.guest !== undefined) continue;
    const laps = run.laps.filter((lap) => isPlain(lap) && lap.isNotBest !== true);
    const times = laps.map(({ id, ms = 0, decimals }) => ({ lapId: id, ms, decimals }));
    if (run.summary?.bestMs !== undefined)
      times.push({ lapId: run.id, ms: run.summary.bestMs, decimals: run.summary.bestDecimals });
    for (const { lapId, ms, decimals } of times) {
      const slowest = ms + (decimals === 1 ? 99 : 0);
      if (best === undefined || slowest < best.slowest) best = { lapId, ms, slowest };
    }
  }
  return best && { lapId: best.lapId, ms: best.ms };
}

/** The value in the middle. */
export function middle(values: readonly number[]): number | undefined {
  const sorted = [...values].sort((a, b) => a - b);
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)], sorted[Math.floor(sorted.length / 2)]];
  return low === undefined || high === undefined ? undefined : (low + high) / 2;
}
