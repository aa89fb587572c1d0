import type { TestFigure } from "#domain";
import { planTest, type TestBasis, type TestPlan, type TestSize, testSize } from "#stats";
import type { readEffort } from "./typedPlan.ts";

/** Pairs offered where the driver's own runs are not known: between the fewest that decide and an evening too many. */
const withoutBasis = 8;
/** Runs of an evening where none is known. */
const runsAnEvening = 4;

/** How large a planned test is. */
export interface PlannedSize {
  /** The number of pairs offered. */
  readonly offered: number;
  /** Worked out from the driver's own runs; undefined where too little is known of them. */
  readonly plan: TestPlan | undefined;
  /** What the number of pairs that stands there means at the wheel. */
  readonly size: TestSize | undefined;
  readonly spreadMs: number | undefined;
  readonly smallestMs: number | undefined;
}

/** The size of a test from what is known of the driver and what was typed; undefined while that cannot be read. */
export function planSize(
  basis: TestBasis,
  figure: TestFigure,
  { smallest, laps, pairs }: ReturnType<typeof readEffort>,
): PlannedSize {
  const spread = basis.spread[figure];
  const spreadMs = spread.known && spread.value.ms > 0 ? spread.value.ms : undefined;
  const smallestMs = smallest.value === undefined ? undefined : Math.round(smallest.value * 1000);
  if (laps.value === undefined)
    return { offered: withoutBasis, plan: undefined, size: undefined, spreadMs, smallestMs };
  const question = {
    lapsARun: laps.value,
    runsAnEvening: basis.runsAnEvening ?? runsAnEvening,
    ...(basis.usualMs.known && { usualMs: basis.usualMs.value }),
  };
  const plan =
    spreadMs === undefined || smallestMs === undefined
      ? undefined
      : planTest({ ...question, spread: spreadMs, smallestMs });
  const offered =
    plan === undefined ? withoutBasis : plan.verdict.isWorth ? plan.pairs : plan.verdict.instead.pairs;
  const wanted = pairs === undefined ? offered : pairs.value;
  const size = wanted === undefined ? undefined : sizeOf(wanted);
  return { offered, plan, size, spreadMs, smallestMs };

  function sizeOf(count: number): TestSize {
    if (spreadMs !== undefined) return testSize({ ...question, spread: spreadMs }, count);
    // Without a spread nothing can be said of what so many pairs find.
    const { foundMs: _, ...rest } = testSize({ ...question, spread: 1 }, count);
    return rest;
  }
}
