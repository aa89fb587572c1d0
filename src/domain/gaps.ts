/** The three places of a corner at which unused road is judged, in the order driven. */
export const gapPlaces = ["entry", "apex", "exit"] as const;
export type GapPlace = (typeof gapPlaces)[number];

/** How gaps are typed and told first: in widths of the driver's own car, or in metres. */
export type GapUnit = "cars" | "metres";

/** What a gap is measured by: the unit chosen, and how wide the car is, in metres. */
export interface GapScale {
  readonly unit: GapUnit;
  readonly carWidth: number;
}
