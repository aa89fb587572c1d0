import { type Chance, normal } from "./drivers.ts";
import { type Place, sectorOfCorner } from "./places.ts";

/** How much a sector's share of the lap varies, as a share of the lap; the sector with the slow corners most. */
const unevenness = [0.0012, 0.0022, 0.001];

/**
 * Splits a lap into sectors that add up to it exactly.
 * @param ms the whole lap, what went wrong included
 * @param lost what a mishap cost, ms, and the corner it happened at
 */
export function sectorsOf(
  place: Place,
  ms: number,
  lost: { readonly ms: number; readonly corner?: number },
  chance: Chance,
): number[] {
  const { sectorShares } = place;
  const undisturbed = ms - lost.ms;
  const where = lost.corner === undefined ? 0 : sectorOfCorner(place, lost.corner);
  const sectors = sectorShares.map((share, index) => {
    const swing = (unevenness[index] ?? 0) * normal(chance);
    return Math.round(undisturbed * (share + swing)) + (index === where ? lost.ms : 0);
  });
  const sum = sectors.reduce((total, sector) => total + sector, 0);
  const last = sectors.length - 1;
  return sectors.map((sector, index) => (index === last ? sector + ms - sum : sector));
}
