import { type Figure, known, unknown } from "#domain";
import { median } from "#numbers";
import { type SectorTimes, sectorColumns } from "./sectorColumns.ts";

const LEAST_LAPS = 5;

/** One sector: its best and usual time and the gap between them, whole ms. */
export interface SectorLine {
  readonly best: number;
  readonly usual: number;
  readonly gap: number;
}

/** Usual sectors = best sectors + gaps, in whole ms. */
export interface SectorAccount {
  readonly sectors: readonly SectorLine[];
  readonly best: number;
  readonly usual: number;
  readonly gap: number;
  /** Index of the sector with the largest gap, the first at a tie. */
  readonly largest: number;
  readonly laps: number;
}

/**
 * The time account by sector: Σ (median sector − best sector) and Σ best sectors. The medians are rounded first, so
 * the gaps and the best sectors add up to the usual sectors.
 * @param laps sector times of pace laps, ms
 * @returns a reason for fewer than five laps
 * @throws RangeError for a time that is not finite or laps with unlike numbers of sectors
 * @example five laps of [30000, 54000] give gap 0 and best 84000
 */
export function sectorAccount(laps: readonly SectorTimes[]): Figure<SectorAccount> {
  const sectors = sectorColumns(laps).map((times): SectorLine => {
    const best = times.reduce((least, ms) => Math.min(least, ms));
    const usual = Math.round(median(times) as number);
    return { best, usual, gap: usual - best };
  });
  if (sectors.length === 0 || laps.length < LEAST_LAPS) {
    return unknown({
      needs: LEAST_LAPS,
      of: "pace lap with sectors",
      has: sectors.length === 0 ? 0 : laps.length,
    });
  }
  const sum = (field: keyof SectorLine) => sectors.reduce((total, sector) => total + sector[field], 0);
  const gaps = sectors.map((sector) => sector.gap);
  return known({
    sectors,
    best: sum("best"),
    usual: sum("usual"),
    gap: sum("gap"),
    largest: gaps.indexOf(Math.max(...gaps)),
    laps: laps.length,
  });
}
