import type { Corner } from "#domain";

/** An invented circuit, with what the driver has found out about its corners. */
export interface Place {
  readonly length: number;
  /** Share of the lap time in each sector. */
  readonly sectorShares: readonly number[];
  readonly corners: readonly Corner[];
}

const bare = (number: number): Corner => ({ number });

export const places: Readonly<Record<string, Place>> = {
  "Varnholt Ring": {
    length: 3620,
    sectorShares: [0.334, 0.381, 0.285],
    corners: [
      { number: 1, direction: "right", radius: 48, width: 11, angle: 95 },
      { number: 2, direction: "left", radius: 70, width: 11, angle: 60 },
      { number: 3, direction: "right" },
      bare(4),
      { number: 5, name: "Sluice", direction: "left", radius: 22, width: 10, angle: 130 },
      { number: 6, direction: "right", radius: 95, width: 10, angle: 40 },
      bare(7),
      { number: 8, name: "Dyke", direction: "right", radius: 35, width: 10, angle: 90 },
      { number: 9, direction: "left" },
      bare(10),
      { number: 11, name: "Pump House", direction: "right", radius: 18, width: 12, angle: 165 },
      { number: 12, direction: "left", radius: 120, width: 12, angle: 35 },
    ],
  },
  Tessemoor: {
    length: 2180,
    sectorShares: [0.361, 0.342, 0.297],
    corners: [
      { number: 1, direction: "right", radius: 60, width: 10, angle: 80 },
      bare(2),
      bare(3),
      { number: 4, name: "Kiln", direction: "right", radius: 16, width: 9, angle: 150 },
      { number: 5, direction: "left" },
      bare(6),
      { number: 7, direction: "left", radius: 28, width: 9, angle: 100 },
      bare(8),
      { number: 9, direction: "right", radius: 75, width: 10, angle: 55 },
    ],
  },
};

/** The sector, from 0, in which a corner lies: corners are spread over the lap as evenly as the sectors. */
export function sectorOfCorner({ corners, sectorShares }: Place, corner: number): number {
  let end = 0;
  const place = (corner - 0.5) / corners.length;
  const sector = sectorShares.findIndex((share) => {
    end += share;
    return place < end;
  });
  return sector < 0 ? sectorShares.length - 1 : sector;
}
