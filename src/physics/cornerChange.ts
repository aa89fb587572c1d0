import { type Figure, type GapPlace, gapPlaces, known } from "#domain";
import { type CornerFacts, likeliest, type SeenGaps } from "./assumedCorner.ts";
import { asSeen, casesOf, extremes, type Misjudged, unusedOf } from "./cornerCases.ts";
import type { Span } from "./cornerCost.ts";
import { cornerLine } from "./cornerLine.ts";

/** By how much the cost of a corner has changed, seconds; below 0 less is given away. */
export interface CornerChange {
  /** In each case of grip and width, the same on both sides; the likeliest first. */
  readonly cases: readonly number[];
  /** How much less and more it may be for gaps that were misjudged, each by itself. */
  readonly misjudged: { readonly less: number; readonly more: number };
}

/**
 * By how much the cost of a corner has changed from what one review saw to what another did. Only gaps that both looked at are
 * compared.
 * @returns undefined where they looked at no gap in common; a reason as `cornerCost`
 * @throws RangeError for a value that is not finite
 */
export function cornerChange(
  facts: CornerFacts,
  before: SeenGaps,
  now: SeenGaps,
): Figure<CornerChange> | undefined {
  const places = gapPlaces.filter((place) => before[place] !== undefined && now[place] !== undefined);
  if (places.length === 0) return undefined;
  const cases = casesOf(facts);
  const [then, today] = [before, now].map(
    (gaps): SeenGaps => Object.fromEntries(places.map((place) => [place, gaps[place]])),
  ) as [SeenGaps, SeenGaps];
  for (const gaps of [then, today]) {
    const line = cornerLine({ ...cases.of(likeliest).corner, unused: unusedOf(asSeen(gaps)) });
    if (!line.known) return line;
  }
  const changes = [likeliest, ...extremes].map(
    (scenario) => cases.secondsAt(scenario, asSeen(today)) - cases.secondsAt(scenario, asSeen(then)),
  );
  /** By how much the cost moves with each gap misjudged one way, above 0. */
  const moves = (gaps: SeenGaps, way: Misjudged) => {
    const seen = cases.secondsAt(likeliest, asSeen(gaps));
    const moved = (place: GapPlace) => cases.secondsAt(likeliest, { gaps, misjudged: { [place]: way } });
    return places.map((place) => Math.max(0, way * (moved(place) - seen)));
  };
  return known({
    cases: changes,
    misjudged: {
      less: Math.hypot(...moves(today, -1), ...moves(then, 1)),
      more: Math.hypot(...moves(today, 1), ...moves(then, -1)),
    },
  });
}

/**
 * The changes of some corners together, as a range. Grip and width are the same for all; gaps are misjudged one by one, so
 * that what they may add is the root of the sum of squares: of errors anywhere within a quarter of a car either way, that
 * holds nine in ten and more.
 * @param changes at least one
 */
export function spanOfChanges(changes: readonly CornerChange[]): Span {
  const [mid = 0, ...others] = (changes[0]?.cases ?? []).map((_, at) =>
    changes.reduce((sum, { cases }) => sum + (cases[at] ?? 0), 0),
  );
  return {
    low: Math.min(mid, ...others) - Math.hypot(...changes.map(({ misjudged }) => misjudged.less)),
    mid,
    high: Math.max(mid, ...others) + Math.hypot(...changes.map(({ misjudged }) => misjudged.more)),
  };
}
