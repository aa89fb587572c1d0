import { nextUniform } from "../random/draws.ts";
import { stream } from "../random/stream.ts";

/**
 * Which setting is driven first in each pair of a rig test: a random order with as many pairs that begin with A as
 * with B, or one more of either when the number is odd (a randomised block design for a single case; Edgington &
 * Onghena 2007, "Randomization Tests"). Shuffled after Fisher and Yates.
 * @param pairs whole number from 0
 * @param seed whole number; the same seed gives the same order
 * @throws RangeError for a number of pairs that is not whole
 * @example pairOrder(4, 7) // two "A" and two "B"
 */
export function pairOrder(pairs: number, seed: number): ("A" | "B")[] {
  if (!Number.isInteger(pairs) || pairs < 0) {
    throw new RangeError(`pairs is ${pairs}: a whole number from 0 is needed`);
  }
  const source = stream(seed);
  const extra = nextUniform(source) < 0.5 ? 1 : 0;
  const beginsA = Math.floor((pairs + extra) / 2);
  const order = Array.from({ length: pairs }, (_, index): "A" | "B" => (index < beginsA ? "A" : "B"));
  for (let i = pairs - 1; i > 0; i--) {
    const j = Math.floor(nextUniform(source) * (i + 1));
    [order[i], order[j]] = [order[j] as "A" | "B", order[i] as "A" | "B"];
  }
  return order;
}
