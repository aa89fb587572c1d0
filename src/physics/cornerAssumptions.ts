import { assumedCarWidth, type Bend, type Straight } from "#domain";

/**
 * What stands in for what is not known of a corner or a car: common practice, no source: our assumptions. Metres, degrees,
 * m/s, m/s². Nothing else in the house assumes anything of a corner.
 */
export const assumedBends: Readonly<Record<Bend, { readonly radius: number; readonly angle: number }>> = {
  hairpin: { radius: 10, angle: 170 },
  slow: { radius: 20, angle: 100 },
  middling: { radius: 45, angle: 90 },
  fast: { radius: 100, angle: 60 },
  kink: { radius: 220, angle: 25 },
};

/** Length of what follows a corner. */
export const assumedStraights: Readonly<Record<Straight, number>> = {
  none: 0,
  short: 120,
  middling: 300,
  long: 650,
};

/** The bend and the straight of a corner of which nothing is said. */
export const assumedBend: Bend = "middling";
export const assumedStraight: Straight = "middling";

/**
 * A club car on road tyres for the circuit. Braking is this share of what the grip would hold; the drive is that in the
 * middle of the gears.
 */
export const assumedCar = { width: assumedCarWidth, brakingShare: 0.9, drive: 3.5, topSpeed: 60 } as const;

/** Least, most likely and most: the grip of road tyres and of slicks, a narrow circuit and a wide one. */
export const assumedGrip = { low: 0.9, mid: 1.1, high: 1.4 } as const;
export const assumedWidth = { low: 9, mid: 11, high: 13 } as const;

/** How far a grip and a width that the driver gave may still be off, as shares. */
export const measuredWithin = { grip: 0.05, width: 0.03 } as const;

/** No bend on a circuit is tighter at its inner edge. */
export const LEAST_RADIUS = 3;

/** A gap judged from a replay may be off by this share of the car's width, either way. */
export const misjudgedCars = 0.25;
