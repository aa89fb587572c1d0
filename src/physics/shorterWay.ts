import { type Figure, known, unknown } from "#domain";
import { cornerLine } from "./cornerLine.ts";
import { type Corner, nothingUnused, usableRoad } from "./cornerShape.ts";
import { wrongWith } from "./wrongWith.ts";

/** The best of the ways that leave the outer edge alone, against the widest arc. */
export interface ShorterWay {
  /** Time of it less that of the widest arc, seconds; below 0 the shorter way is faster. */
  readonly seconds: number;
  readonly wins: boolean;
  /** Metres it leaves unused at entry and at exit. */
  readonly unused: Corner["unused"];
}

const tries = 20;

/**
 * Whether staying near the inner edge, the shorter way, beats the arc that uses the whole road, as it may in a hairpin
 * between short straights or in a corner taken flat out. Ways that leave more and more of the outer edge unused are tried,
 * the last of them along the inner edge. Our methods, §9.
 * @param corner what it leaves unused is not looked at
 * @returns a reason that names what is wrong with the corner
 * @throws RangeError for a NaN or an infinite value
 */
export function shorterWay(corner: Omit<Corner, "unused">): Figure<ShorterWay> {
  const wrong = wrongWith({ ...corner, unused: nothingUnused });
  if (wrong !== undefined) return unknown(wrong);
  const { entryRoom, exitRoom } = usableRoad(corner);
  let best: ShorterWay = { seconds: Infinity, wins: false, unused: nothingUnused };
  for (let tried = 1; tried <= tries; tried++) {
    const share = tried / tries;
    const unused = { entry: entryRoom * share, apex: 0, exit: exitRoom * share };
    const line = cornerLine({ ...corner, unused });
    if (!line.known) return line;
    const { seconds } = line.value;
    if (seconds < best.seconds) best = { seconds, wins: seconds < 0, unused };
  }
  return known(best);
}
