import { type Figure, known, unknown } from "#domain";
import { quantile } from "#numbers";
import { type SectorTimes, sectorColumns } from "./sectorColumns.ts";
import type { LapOfSectors } from "./sumOfBestSectors.ts";

const LEAST_LAPS = 8;

/**
 * The reachable lap: the lower quartiles of all sectors added up, each in whole ms.
 * @param laps sector times of pace laps, ms
 * @returns a reason for fewer than eight laps
 * @throws RangeError for a time that is not finite or laps with unlike numbers of sectors
 * @example eight laps of [30000, 54000] give ms 84000
 */
export function reachableLap(laps: readonly SectorTimes[]): Figure<LapOfSectors> {
  const sectors = sectorColumns(laps).map((times) => Math.round(quantile(times, 0.25) as number));
  if (sectors.length === 0 || laps.length < LEAST_LAPS) {
    return unknown({
      needs: LEAST_LAPS,
      of: "pace lap with sectors",
      has: sectors.length === 0 ? 0 : laps.length,
    });
  }
  return known({ ms: sectors.reduce((sum, ms) => sum + ms, 0), sectors, laps: laps.length });
}
