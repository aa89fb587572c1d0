import { type Figure, known } from "#domain";
import {
  type AssumedFact,
  type CornerFacts,
  likeliest,
  type Scenario,
  type SeenGaps,
} from "./assumedCorner.ts";
import {
  asSeen,
  casesOf,
  type Ends,
  endsOf,
  extremes,
  type Misjudged,
  misjudgedBy,
  unusedOf,
} from "./cornerCases.ts";
import { type CornerLine, cornerLine } from "./cornerLine.ts";
import { apexOf, type Corner, nothingUnused } from "./cornerShape.ts";
import { cornerWay } from "./cornerWay.ts";
import { squaredLimit } from "./squaredLimit.ts";

/** Least, most likely and most. */
export interface Span {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** A speed limit of the line as driven, and of the one with nothing unused, m/s. */
export interface DrivenSpeed {
  readonly driven: number;
  readonly possible: number;
}

/** What the unused road of one corner costs in one car. */
export interface CornerCost {
  /** Seconds a lap, never below 0. */
  readonly seconds: Span;
  /** Speed given away on the arc out of the corner, m/s. */
  readonly exitSpeed: Span;
  readonly speeds: Readonly<Record<"entry" | "apex" | "exit", DrivenSpeed>>;
  /** The most likely case, and its line against the one with nothing unused. */
  readonly corner: Corner;
  readonly line: CornerLine;
  /** The shorter way beats the wider arc, or all of the road is used. */
  readonly nothingToGain: boolean;
  readonly assumed: readonly AssumedFact[];
  readonly isTooSlow: boolean;
  /** Seconds over the plausible grip alone, over the plausible width alone, and with every gap misjudged alone. */
  readonly hangsOn: Readonly<Record<"grip" | "width" | "gap", Ends>>;
}

/**
 * What the unused road of a corner costs: least and most over the plausible grip and width, each with every gap misjudged by
 * a quarter of the car's width either way. Of gaps nobody looked at nothing is known to be unused; over the edge is nothing
 * unused. Our methods, §9; the plausible values in `cornerAssumptions`.
 * @returns a reason that names what is wrong with the corner, or with the gaps in it
 * @throws RangeError for a value that is not finite
 */
export function cornerCost(facts: CornerFacts, gaps: SeenGaps): Figure<CornerCost> {
  const cases = casesOf(facts);
  const { corner: shape, assumed, isTooSlow } = cases.of(likeliest);
  const corner = { ...shape, unused: unusedOf(asSeen(gaps)) };
  const middle = cornerLine(corner);
  if (!middle.known) return middle;
  const line = middle.value;
  const at = (scenario: Scenario, misjudged: Misjudged) =>
    cases.secondsAt(scenario, misjudgedBy(misjudged, gaps));
  const mid = Math.max(0, line.seconds);
  const grip = [at({ grip: "low", width: "mid" }, 0), at({ grip: "high", width: "mid" }, 0), mid];
  const width = [at({ grip: "mid", width: "low" }, 0), at({ grip: "mid", width: "high" }, 0), mid];
  const gap = [at(likeliest, -1), at(likeliest, 1), mid];
  const far = extremes.flatMap((scenario) => [at(scenario, -1), at(scenario, 1)]);
  const speeds = speedsOf(corner);
  const givenAway = [likeliest, ...extremes].flatMap((scenario) =>
    ([-1, 0, 1] as const).map((misjudged) => {
      const { driven, possible } = speedsOf(cases.cornerAt(scenario, misjudgedBy(misjudged, gaps))).exit;
      return possible - driven;
    }),
  );
  return known({
    seconds: { ...endsOf([...grip, ...width, ...gap, ...far]), mid },
    exitSpeed: { ...endsOf(givenAway), mid: speeds.exit.possible - speeds.exit.driven },
    speeds,
    corner,
    line,
    nothingToGain: line.nothingToGain,
    assumed,
    isTooSlow,
    hangsOn: { grip: endsOf(grip), width: endsOf(width), gap: endsOf(gap) },
  });
}

/** Speeds that grip and top speed allow on the arcs, and at the apex, where both meet. */
function speedsOf(corner: Corner): CornerCost["speeds"] {
  const { grip, topSpeed = Infinity } = corner;
  const limits = (unused: Corner["unused"]) => {
    const { entryRadius, exitRadius } = cornerWay(corner, unused, apexOf(corner));
    const [entry, exit] = [entryRadius, exitRadius].map((radius) =>
      Math.min(topSpeed, Math.sqrt(squaredLimit(radius, grip))),
    ) as [number, number];
    return { entry, apex: Math.min(entry, exit), exit };
  };
  const [driven, possible] = [limits(corner.unused), limits(nothingUnused)];
  const both = (place: "entry" | "apex" | "exit") => ({ driven: driven[place], possible: possible[place] });
  return { entry: both("entry"), apex: both("apex"), exit: both("exit") };
}
