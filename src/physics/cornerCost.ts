import type { Car, Corner as KnownCorner, Straight } from "#domain";
import type { Corner } from "./cornerShape.ts";

/** What is known of a corner in one car; whatever is missing is assumed. */
export interface CornerFacts {
  readonly corner: KnownCorner;
  readonly car: Pick<Car, "width" | "grip" | "braking" | "drive" | "topSpeed">;
  /** The straight before it: that after the corner before it. */
  readonly before: { readonly after?: Straight | undefined; readonly length?: number | undefined };
  /** Lowest speed seen in it, m/s, and the gaps of the line it was seen on. */
  readonly lowestSpeed?: number | undefined;
}

/** What of a corner is assumed, in the order in which the answer hangs on it. */
export type AssumedFact =
  | "bend"
  | "radius"
  | "width"
  | "angle"
  | "after"
  | "before"
  | "grip"
  | "car width"
  | "braking"
  | "drive"
  | "top speed";

/** A corner with all that its sums need: metres, degrees, m/s, m/s². */
export interface AssumedCorner {
  readonly corner: Omit<Corner, "unused">;
  readonly assumed: readonly AssumedFact[];
}

/** Least, most likely and most. */
export interface Span {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}
