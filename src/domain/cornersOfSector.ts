import type { Corner } from "./rows.ts";

/**
 * Numbers of the corners known to lie in a sector, in lap order.
 * @param sector from 1
 */
export function cornersOfSector(corners: readonly Corner[], sector: number): number[] {
  return corners
    .filter((corner) => corner.sector === sector)
    .map(({ number }) => number)
    .sort((a, b) => a - b);
}
