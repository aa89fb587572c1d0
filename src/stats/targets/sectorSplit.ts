import { type Figure, known, unknown } from "#domain";
import { requireNumber } from "#numbers";
import { largestRemainder } from "./largestRemainder.ts";

/** What a sector usually takes and what it has taken at best, in ms. */
export interface SectorPace {
  readonly medianMs: number;
  readonly bestMs: number;
}

/**
 * Shares the time to find over the sectors, in whole ms that add up to it: in proportion to (median − best) of each,
 * and what the best sectors do not cover in proportion to the sectors' length in time. Our methods, §6.
 * @param gainMs time to find, a whole number of ms above 0
 * @returns one share for each sector, or a reason without sectors or with nothing to find
 * @throws RangeError for a value that is not finite, naming it, or a gain that is not whole
 * @example sectorSplit(300, [{ medianMs: 30_200, bestMs: 30_000 }, { medianMs: 40_400, bestMs: 40_000 }]) // 100, 200
 */
export function sectorSplit(gainMs: number, sectors: readonly SectorPace[]): Figure<number[]> {
  requireNumber(gainMs, "gainMs");
  if (!Number.isInteger(gainMs)) throw new RangeError(`gainMs is ${gainMs}: whole milliseconds are needed`);
  sectors.forEach(({ medianMs, bestMs }, i) => {
    requireNumber(medianMs, `sectors[${i}].medianMs`);
    requireNumber(bestMs, `sectors[${i}].bestMs`);
    if (medianMs <= 0) throw new RangeError(`sectors[${i}].medianMs is ${medianMs}: a time is needed`);
  });
  if (sectors.length === 0) return unknown({ needs: 1, of: "sector", has: 0 });
  if (gainMs <= 0) return unknown({ because: "nothing to find", gainMs });
  const reserves = sectors.map(({ medianMs, bestMs }) => Math.max(0, medianMs - bestMs));
  const reserve = Math.min(gainMs, Math.floor(reserves.reduce((sum, value) => sum + value, 0)));
  const covered = reserve > 0 ? largestRemainder(reserve, reserves) : sectors.map(() => 0);
  const beyond = largestRemainder(
    gainMs - reserve,
    sectors.map(({ medianMs }) => medianMs),
  );
  return known(covered.map((share, i) => share + (beyond[i] ?? 0)));
}
