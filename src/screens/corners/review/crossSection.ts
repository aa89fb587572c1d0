import { type Corner, type GapPlace, gapPlaces } from "#domain";
import type { RoadAtCorner } from "#entry";
import { assumedWidth } from "#physics";

/** One place of a corner as it is drawn: seen along the road, in metres from the edge that the gap is measured from. */
export interface CrossSection {
  readonly place: GapPlace;
  /** Between the edges a driver may use, the kerb of this place included. */
  readonly width: number;
  readonly carWidth: number;
  /** Metres of kerb at the edge that the gap is measured from. */
  readonly kerb: number;
  /** The side of the picture on which that edge lies. */
  readonly from: "left" | "right";
  /** Whether the width of the road is assumed. */
  readonly isAssumed: boolean;
}

/**
 * The road at one place of a corner. Entry and exit are judged at the outer edge, the apex at the inner one, which lies on
 * the right where the corner turns right. Of one whose direction is not known, a right-hander is drawn.
 */
export function crossSection(
  place: GapPlace,
  corner: Pick<Corner, "direction" | "width" | "kerbs">,
  carWidth: number,
): CrossSection {
  const kerb = corner.kerbs?.[place] ?? 0;
  const width = (corner.width ?? assumedWidth.mid) + kerb;
  const isInner = place === "apex";
  return {
    place,
    // A road that its car does not fit on cannot be drawn; the figures refuse it with the reason.
    width: Math.max(width, carWidth * 1.5),
    carWidth,
    kerb,
    from: isInner === (corner.direction === "left") ? "left" : "right",
    isAssumed: corner.width === undefined,
  };
}

/** Steps of the slider, quarters of the car: from a whole car over the edge to the other edge. */
export const stepsOf = ({ width, carWidth }: CrossSection) => ({
  least: -4,
  most: Math.floor(((width - carWidth) / carWidth) * 4 + 1e-9),
});

/** What gaps typed at the corner are held against: the road that is drawn, or where its width is assumed the widest assumed. */
export function roadOf(
  corner: Pick<Corner, "direction" | "width" | "kerbs">,
  carWidth: number,
): RoadAtCorner {
  const widest = { ...corner, width: corner.width ?? assumedWidth.high };
  const widthAt = (place: GapPlace) => [place, crossSection(place, widest, carWidth).width] as const;
  return {
    widths: Object.fromEntries(gapPlaces.map(widthAt)) as Record<GapPlace, number>,
    isAssumed: corner.width === undefined,
  };
}
