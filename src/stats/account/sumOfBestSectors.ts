import { type Figure, known, unknown } from "#domain";
import { type SectorTimes, sectorColumns } from "./sectorColumns.ts";

/** A lap put together from sectors: its time, the parts that add up to it, and the laps it was picked from. */
export interface LapOfSectors {
  readonly ms: number;
  readonly sectors: readonly number[];
  readonly laps: number;
}

/**
 * The sum of the best sectors of clean laps: a bound, not a goal, the lower the more laps it is picked from.
 * @param laps sector times of clean laps, ms
 * @returns a reason without a lap with sectors
 * @throws RangeError for a time that is not finite or laps with unlike numbers of sectors
 * @example sumOfBestSectors([[30000, 54000], [30100, 53800]]) // ms 83800
 */
export function sumOfBestSectors(laps: readonly SectorTimes[]): Figure<LapOfSectors> {
  const sectors = sectorColumns(laps).map((times) => times.reduce((best, ms) => Math.min(best, ms)));
  if (sectors.length === 0) return unknown({ needs: 1, of: "clean lap with sectors", has: 0 });
  return known({ ms: sectors.reduce((sum, ms) => sum + ms, 0), sectors, laps: laps.length });
}
