import type { Bend, Corner, Straight } from "#domain";

/** An invented circuit, with what the driver has found out about its corners. */
export interface Place {
  readonly length: number;
  /** Share of the lap time in each sector. */
  readonly sectorShares: readonly number[];
  readonly corners: readonly Corner[];
}

/** A corner as the driver knows it: its number and kind, a direction and what follows, seldom more. */
const corner = (
  number: number,
  direction: "left" | "right",
  bend: Bend,
  after: Straight,
  more: Partial<Corner> = {},
): Corner => ({ number, direction, bend, after, ...more });

/** The sectors that the simulator times, as the corners' own figure of it has them. */
const timed = (place: Place): Place => ({
  ...place,
  corners: place.corners.map((one) => ({ ...one, sector: sectorOfCorner(place, one.number) + 1 })),
});

export const places: Readonly<Record<string, Place>> = {
  "Varnholt Ring": timed({
    length: 3620,
    sectorShares: [0.334, 0.381, 0.285],
    corners: [
      corner(1, "right", "middling", "short"),
      corner(2, "left", "fast", "none"),
      corner(3, "right", "slow", "middling", { kerbs: { apex: 0.4 } }),
      corner(4, "left", "kink", "short"),
      corner(5, "left", "slow", "short", {
        name: "Sluice",
        radius: 22,
        width: 10,
        angle: 130,
        kerbs: { exit: 0.8 },
      }),
      corner(6, "right", "fast", "none"),
      corner(7, "left", "middling", "middling"),
      corner(8, "right", "middling", "middling", { name: "Dyke" }),
      corner(9, "left", "slow", "none"),
      corner(10, "right", "middling", "middling"),
      corner(11, "right", "hairpin", "long", { name: "Pump House", radius: 18, width: 12, angle: 165 }),
      corner(12, "left", "fast", "long"),
    ],
  }),
  Tessemoor: timed({
    length: 2180,
    sectorShares: [0.361, 0.342, 0.297],
    corners: [
      corner(1, "right", "fast", "short"),
      corner(2, "left", "middling", "none"),
      corner(3, "right", "slow", "short"),
      corner(4, "right", "hairpin", "long", { name: "Kiln", radius: 16, width: 9, angle: 150 }),
      corner(5, "left", "kink", "short"),
      corner(6, "right", "middling", "none"),
      corner(7, "left", "slow", "short"),
      corner(8, "right", "fast", "middling"),
      corner(9, "right", "middling", "middling"),
    ],
  }),
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
