import type { Car, Combo, Corner, CornerReview, ReviewedCorner } from "#domain";
import type { CornerFacts, SeenGaps } from "#physics";

/** What the sums of a combo's corners rest on. */
export interface CornersOfCombo {
  /** As the layout has them, in any order; one that is not among them is known by its number alone. */
  readonly corners: readonly Corner[];
  readonly car: Pick<Car, "width" | "grip" | "braking" | "drive" | "topSpeed">;
  readonly lowestSpeeds: NonNullable<Combo["lowestSpeeds"]>;
  /** The newest first. */
  readonly reviews: readonly CornerReview[];
}

/** What a review saw of one corner; undefined where it looked at no gap of it. */
export function gapsIn(review: CornerReview, number: number): SeenGaps | undefined {
  const seen = review.corners.find((corner) => corner.number === number && hasGaps(corner));
  if (seen === undefined) return undefined;
  const { entry, apex, exit } = seen;
  return { entry, apex, exit };
}

const hasGaps = ({ entry, apex, exit }: ReviewedCorner) =>
  [entry, apex, exit].some((gap) => gap !== undefined);

/** The corner before one in lap order: that numbered one less, before the first the last where all up to it are known. */
export function cornerBefore(corners: readonly Corner[], number: number): Corner | undefined {
  const isLapKnown = corners.every((_, index) => corners.some((corner) => corner.number === index + 1));
  const before = number === 1 && isLapKnown ? corners.length : number - 1;
  return before === number ? undefined : corners.find((corner) => corner.number === before);
}

/** The facts of a corner, for its sums. A lowest speed is taken to be of the line that the newest review saw. */
export function cornerFacts(number: number, combo: CornersOfCombo): CornerFacts {
  const { corners, car, lowestSpeeds, reviews } = combo;
  const before = cornerBefore(corners, number);
  return {
    corner: corners.find((corner) => corner.number === number) ?? { number },
    car,
    before: { after: before?.after, length: before?.afterLength },
    lowestSpeed: lowestSpeeds.find((seen) => seen.number === number)?.speed,
    seenOn: reviews.map((review) => gapsIn(review, number)).find((gaps) => gaps !== undefined),
  };
}
