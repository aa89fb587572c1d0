import { differenceFound, leastPairs, pairsNeeded, testLevel } from "./pairsNeeded.ts";

/** More pairs than this are not worth driving: 48 runs for one setting, after which the driver is another. */
export const MOST_PAIRS = 24;
/** More evenings than this are not worth it either: the season's practice would go into one question. */
export const MOST_EVENINGS = 10;

export interface TestPlanQuestion {
  /** Standard deviation of the difference of neighbouring runs, ms: `spreadOfRunDifferences`. */
  readonly spread: number;
  /** The smallest difference that would matter, ms. */
  readonly smallestMs: number;
  /** Two-sided level of the test, a fraction; `testLevel` unless said. */
  readonly level?: number;
  /** Wanted chance to find that difference, a fraction; 0.8 unless said. */
  readonly power?: number;
  readonly lapsARun: number;
  /** Runs of the test in one evening; both of a pair are of one. */
  readonly runsAnEvening: number;
  /** Usual lap, ms, for the minutes. */
  readonly usualMs?: number;
}

/** What so many pairs mean at the wheel. */
export interface TestSize {
  readonly pairs: number;
  readonly runs: number;
  readonly laps: number;
  readonly evenings: number;
  /** Time driven in all; absent without a usual lap. */
  readonly minutes?: number;
  /** The smallest difference that so many pairs find, ms; absent where they are too few for any. */
  readonly foundMs?: number;
}

/** A rig test as it would have to be driven, and whether it is worth it. */
export interface TestPlan extends TestSize {
  readonly level: number;
  readonly power: number;
  readonly verdict:
    | { readonly isWorth: true }
    | {
        readonly isWorth: false;
        /** What there are too many of, and the most that is worth driving. */
        readonly tooMany: "pairs" | "evenings";
        readonly most: number;
        /** The largest test that is worth driving, and what it would find. */
        readonly instead: TestSize;
      };
}

/**
 * How many pairs a rig test needs (`pairsNeeded`), as evenings and minutes too, and whether it is worth it: not with more
 * than 24 pairs, nor on more than ten evenings (common practice, no source: a driver changes within weeks, and what so small a
 * difference is worth is driven off by practising). Then it says what the largest test worth driving would find.
 * @throws RangeError for a difference of 0, a spread that is not above 0, or fractions outside 0 to 1
 * @example planTest({ spread: 250, smallestMs: 150, lapsARun: 6, runsAnEvening: 4 }).evenings // 10
 */
export function planTest(question: TestPlanQuestion): TestPlan {
  const { spread, smallestMs, level = testLevel, power = 0.8 } = question;
  const pairs = pairsNeeded({ difference: smallestMs, standardDeviation: spread, power, level });
  const size = testSize(question, pairs);
  const most = mostPairs(question);
  const tooMany = pairs > MOST_PAIRS ? "pairs" : "evenings";
  return {
    ...size,
    level,
    power,
    verdict:
      pairs <= most
        ? { isWorth: true }
        : {
            isWorth: false,
            tooMany,
            most: tooMany === "pairs" ? MOST_PAIRS : MOST_EVENINGS,
            instead: testSize(question, most),
          },
  };
}

/** What a number of pairs means at the wheel, and the smallest difference it finds: the way back of `planTest`. */
export function testSize(question: Omit<TestPlanQuestion, "smallestMs">, pairs: number): TestSize {
  const { spread, level = testLevel, power = 0.8, lapsARun, usualMs } = question;
  const runs = 2 * pairs;
  const laps = runs * lapsARun;
  const foundMs = differenceFound({ pairs, standardDeviation: spread, power, level });
  return {
    pairs,
    runs,
    laps,
    evenings: Math.ceil(pairs / pairsAnEvening(question)),
    ...(usualMs !== undefined && { minutes: (laps * usualMs) / 60_000 }),
    ...(foundMs !== undefined && { foundMs }),
  };
}

/** Both runs of a pair are of one evening, and one pair is driven at least. */
function pairsAnEvening({ runsAnEvening }: Pick<TestPlanQuestion, "runsAnEvening">): number {
  return Math.max(1, Math.floor(runsAnEvening / 2));
}

/** Pairs of the largest test that is worth driving; never fewer than can decide. */
function mostPairs(question: Pick<TestPlanQuestion, "runsAnEvening" | "level">): number {
  const inEvenings = MOST_EVENINGS * pairsAnEvening(question);
  return Math.max(leastPairs(question.level ?? testLevel), Math.min(MOST_PAIRS, inEvenings));
}
