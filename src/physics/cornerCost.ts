import { type Figure, known } from "#domain";
import {
  type AssumedCorner,
  type AssumedFact,
  assumedCorner,
  type CornerFacts,
  likeliest,
  type Scenario,
  type SeenGaps,
} from "./assumedCorner.ts";
import { misjudgedCars } from "./cornerAssumptions.ts";
import { type CornerLine, cornerLine } from "./cornerLine.ts";
import { apexOf, type Corner, nothingUnused, usableRoad } from "./cornerShape.ts";
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

/** From least to most. */
interface Ends {
  readonly low: number;
  readonly high: number;
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

/** Which way all gaps are misjudged: a quarter of a car less than seen, as seen, or as much more. */
type Misjudged = -1 | 0 | 1;

const extremes: readonly Scenario[] = (["low", "high"] as const).flatMap((grip) =>
  (["low", "high"] as const).map((width) => ({ grip, width })),
);

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
  const corner = { ...shape, unused: unusedOf(gaps, 0) };
  const middle = cornerLine(corner);
  if (!middle.known) return middle;
  const line = middle.value;
  const at = (scenario: Scenario, misjudged: Misjudged) => cases.secondsAt(scenario, gaps, misjudged);
  const mid = Math.max(0, line.seconds);
  const grip = [at({ grip: "low", width: "mid" }, 0), at({ grip: "high", width: "mid" }, 0), mid];
  const width = [at({ grip: "mid", width: "low" }, 0), at({ grip: "mid", width: "high" }, 0), mid];
  const gap = [at(likeliest, -1), at(likeliest, 1), mid];
  const far = extremes.flatMap((scenario) => [at(scenario, -1), at(scenario, 1)]);
  const speeds = speedsOf(corner);
  const givenAway = [likeliest, ...extremes].flatMap((scenario) =>
    ([-1, 0, 1] as const).map((misjudged) => {
      const { driven, possible } = speedsOf(cases.cornerAt(scenario, gaps, misjudged)).exit;
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

/**
 * By how much the cost of a corner has changed from what one review saw to what another did, seconds; below 0 less is given
 * away. Grip and width are the same on both sides, the gaps of each are misjudged by themselves. Only gaps that both looked
 * at are compared.
 * @returns undefined where they looked at no gap in common; a reason as `cornerCost`
 * @throws RangeError for a value that is not finite
 */
export function cornerChange(facts: CornerFacts, before: SeenGaps, now: SeenGaps): Figure<Span> | undefined {
  const places = gapPlaces.filter((place) => before[place] !== undefined && now[place] !== undefined);
  if (places.length === 0) return undefined;
  const cases = casesOf(facts);
  const [then, today] = [before, now].map(
    (gaps): SeenGaps => Object.fromEntries(places.map((place) => [place, gaps[place]])),
  ) as [SeenGaps, SeenGaps];
  for (const gaps of [then, today]) {
    const line = cornerLine({ ...cases.of(likeliest).corner, unused: unusedOf(gaps, 0) });
    if (!line.known) return line;
  }
  const over = (gaps: SeenGaps, scenario: Scenario) =>
    endsOf(([-1, 0, 1] as const).map((misjudged) => cases.secondsAt(scenario, gaps, misjudged)));
  const changes = [likeliest, ...extremes].flatMap((scenario) => {
    const [was, is] = [over(then, scenario), over(today, scenario)];
    return [is.low - was.high, is.high - was.low];
  });
  const mid = cases.secondsAt(likeliest, today, 0) - cases.secondsAt(likeliest, then, 0);
  return known({ ...endsOf(changes), mid });
}

const gapPlaces = ["entry", "apex", "exit"] as const;

const endsOf = (values: readonly number[]): Ends => ({
  low: Math.min(...values),
  high: Math.max(...values),
});

/** The cases of a corner, each worked out once. */
function casesOf(facts: CornerFacts) {
  const made = new Map<string, AssumedCorner>();
  const of = (scenario: Scenario) => {
    const key = `${scenario.grip} ${scenario.width}`;
    const corner = made.get(key) ?? assumedCorner(facts, scenario);
    made.set(key, corner);
    return corner;
  };
  const cornerAt = (scenario: Scenario, gaps: SeenGaps, misjudged: Misjudged): Corner => {
    const { corner } = of(scenario);
    return {
      ...corner,
      unused: fitting(corner, unusedOf(gaps, misjudged * misjudgedCars * corner.carWidth)),
    };
  };
  /** 0 where the shorter way wins, or the case allows no such corner. */
  const secondsAt = (scenario: Scenario, gaps: SeenGaps, misjudged: Misjudged): number => {
    const line = cornerLine(cornerAt(scenario, gaps, misjudged));
    return line.known ? Math.max(0, line.value.seconds) : 0;
  };
  return { of, cornerAt, secondsAt };
}

/** What is unused where so much more is left than was seen; nothing where nobody looked. */
function unusedOf(gaps: SeenGaps, more: number): Corner["unused"] {
  const of = (metres: number | undefined) => (metres === undefined ? 0 : Math.max(0, metres + more));
  return { entry: of(gaps.entry), apex: of(gaps.apex), exit: of(gaps.exit) };
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
