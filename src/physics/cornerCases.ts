import { type GapPlace, gapPlaces } from "#domain";
import {
  type AssumedCorner,
  assumedCorner,
  type CornerFacts,
  type Scenario,
  type SeenGaps,
} from "./assumedCorner.ts";
import { misjudgedCars } from "./cornerAssumptions.ts";
import { cornerLine } from "./cornerLine.ts";
import { type Corner, usableRoad } from "./cornerShape.ts";

/** From least to most. */
export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** Which way a gap is misjudged: a quarter of a car less than seen, as seen, or as much more. */
export type Misjudged = -1 | 0 | 1;

/** Gaps as seen, and which way each is misjudged; none where it is not said. */
export interface JudgedGaps {
  readonly gaps: SeenGaps;
  readonly misjudged: Readonly<Partial<Record<GapPlace, Misjudged>>>;
}

/** Gaps taken as they were seen. */
export const asSeen = (gaps: SeenGaps): JudgedGaps => ({ gaps, misjudged: {} });

/** Gaps all misjudged the same way. */
export const misjudgedBy = (misjudged: Misjudged, gaps: SeenGaps): JudgedGaps => ({
  gaps,
  misjudged: { entry: misjudged, apex: misjudged, exit: misjudged },
});

/** The ends of what is plausible of grip and width. */
export const extremes: readonly Scenario[] = (["low", "high"] as const).flatMap((grip) =>
  (["low", "high"] as const).map((width) => ({ grip, width })),
);

export const endsOf = (values: readonly number[]): Ends => ({
  low: Math.min(...values),
  high: Math.max(...values),
});

/** The cases of a corner, each worked out once. */
export function casesOf(facts: CornerFacts) {
  const made = new Map<string, AssumedCorner>();
  const of = (scenario: Scenario) => {
    const key = `${scenario.grip} ${scenario.width}`;
    const corner = made.get(key) ?? assumedCorner(facts, scenario);
    made.set(key, corner);
    return corner;
  };
  const cornerAt = (scenario: Scenario, judged: JudgedGaps): Corner => {
    const { corner } = of(scenario);
    return { ...corner, unused: fitting(corner, unusedOf(judged, corner.carWidth)) };
  };
  /** 0 where the shorter way wins, or the case allows no such corner. */
  const secondsAt = (scenario: Scenario, judged: JudgedGaps): number => {
    const line = cornerLine(cornerAt(scenario, judged));
    return line.known ? Math.max(0, line.value.seconds) : 0;
  };
  return { of, cornerAt, secondsAt };
}

/**
 * What is unused by gaps as judged; nothing where nobody looked, or over the edge.
 * @param carWidth m; only asked for where gaps are misjudged
 */
export function unusedOf({ gaps, misjudged }: JudgedGaps, carWidth = 0): Corner["unused"] {
  const of = (place: GapPlace) => {
    const metres = gaps[place];
    const more = (misjudged[place] ?? 0) * misjudgedCars * carWidth;
    return metres === undefined ? 0 : Math.max(0, metres + more);
  };
  const [entry, apex, exit] = gapPlaces.map(of) as [number, number, number];
  return { entry, apex, exit };
}

/** No more than there is on a road that may be narrower than the one the gaps were seen on. */
function fitting(corner: AssumedCorner["corner"], unused: Corner["unused"]): Corner["unused"] {
  const { entryRoom, exitRoom } = usableRoad(corner);
  const apex = Math.max(0, Math.min(unused.apex, entryRoom, exitRoom));
  return {
    apex,
    entry: Math.min(unused.entry, entryRoom - apex),
    exit: Math.min(unused.exit, exitRoom - apex),
  };
}
