import { unknown } from "#domain";
import type { PlanFacts } from "#stats";

/** A driver of twelve evenings of twenty laps who loses nothing that can be told: no focus speaks. */
export const steadyFacts: PlanFacts = {
  driven: { sessions: 12, laps: 240, before: 0 },
  evening: { laps: 24, minutes: 90, lapMs: 84_000 },
  daysSince: 3,
  lastBreak: undefined,
  account: { pace: 0, repeatability: 0, mistakes: 0, others: 0, balance: 0, laps: 120 },
  evenings: 6,
  lost: { laps: 120, lost: 0 },
  corners: [],
  sector: undefined,
  rigTest: undefined,
  overnight: unknown({ needs: 6, of: "pair of evenings in a row", has: 0 }),
  spread: unknown({ needs: 6, of: "session", has: 0 }),
  target: undefined,
  usual: 84_000,
  scatter: 300,
  races: 0,
  tried: [],
};

/** A corner of which nothing is known but what a test says. */
export const aCorner = (
  number: number,
  fields: Partial<PlanFacts["corners"][number]> = {},
): PlanFacts["corners"][number] => ({
  number,
  worth: undefined,
  unused: undefined,
  mistakes: 0,
  laps: 120,
  mistakesMs: undefined,
  braking: undefined,
  throttle: undefined,
  gap: undefined,
  ...fields,
});
