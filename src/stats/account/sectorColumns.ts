import { requireNumber } from "#numbers";

/** The sector times of one lap, ms. */
export type SectorTimes = ArrayLike<number>;

/**
 * The times of each sector, over all laps.
 * @throws RangeError for a time that is not finite or laps with unlike numbers of sectors
 */
export function sectorColumns(laps: readonly SectorTimes[]): number[][] {
  const sectors = laps[0]?.length ?? 0;
  laps.forEach((lap, index) => {
    if (lap.length !== sectors) {
      throw new RangeError(`laps[${index}] has ${lap.length} sectors and laps[0] has ${sectors}`);
    }
  });
  const columns = Array.from({ length: sectors }, () => new Array<number>(laps.length));
  laps.forEach((lap, index) => {
    for (let sector = 0; sector < sectors; sector++) {
      const ms = lap[sector] as number;
      if (!Number.isFinite(ms)) requireNumber(ms, `laps[${index}][${sector}]`);
      (columns[sector] as number[])[index] = ms;
    }
  });
  return columns;
}
