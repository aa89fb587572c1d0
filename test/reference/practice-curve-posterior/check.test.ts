import { describe, expect, test } from "vitest";
import { curveDraws } from "../../../src/stats/weeks/curveDraws.ts";
import { curvePosterior } from "../../../src/stats/weeks/curvePosterior.ts";
import data from "./practice-curve-posterior.json";

const names = ["improver8", "flat6", "two", "slow12"] as const;
const count = 20_000;

/** Sessions whose middle lies at the given places; their laps do not matter otherwise. */
const sessionsAt = (places: readonly number[], medians: readonly number[]) =>
  medians.map((medianMs, i) => ({ lapsBefore: places[i] ?? 0, laps: 0, medianMs, bestMs: medianMs }));

/** So many sessions to come, all without laps but the last, whose middle lies at the given place. */
const futureAt = (last: number, place: number, session: number) =>
  Array.from({ length: session }, (_, i) => ({ laps: i === session - 1 ? 2 * (place - last) : 0 }));

/** The share of draws under the exact quantile must lie within four standard errors of it. */
function within(draws: Float64Array, quantile: number, share: number) {
  const below = draws.reduce((sum, value) => sum + (value < quantile ? 1 : 0), 0) / draws.length;
  expect(Math.abs(below - share)).toBeLessThanOrEqual(4 * Math.sqrt((share * (1 - share)) / draws.length));
}

describe.each(names)("practice curve of %s against an exact mixture of Student t", (name) => {
  const given = data.data[name];
  const expected = data.expected[name];
  const history = sessionsAt(given.x, given.sessionMediansMs);
  const posterior = curvePosterior(history);

  test("weights: flat, and the correlation of neighbours", () => {
    expect(posterior.usual).toBe(expected.medianSession);
    expect(posterior.flatChance).toBeCloseTo(expected.probabilityFlat_bIsZero, 9);
    for (const [correlation, probability] of Object.entries(expected.probabilityOfRho)) {
      const found = posterior.cells
        .filter((cell) => cell.correlation === Number(correlation))
        .reduce((sum, cell) => sum + cell.weight, 0);
      expect(found).toBeCloseTo(probability, 9);
    }
  });

  test("draws: the floor and the medians to come", () => {
    for (const [i, session] of given.futureSessionsAhead.entries()) {
      const ahead = given.futureX[i] ?? 0;
      const future = futureAt(given.x.at(-1) ?? 0, ahead, session);
      const draws = curveDraws(posterior, history, future, 20260101, count);
      for (const share of [0.05, 0.5, 0.95] as const) within(draws.floors, expected.floor[share], share);
      const medians = draws.medians[session - 1] ?? new Float64Array();
      for (const share of [0.05, 0.25, 0.5, 0.75, 0.95] as const) {
        within(medians, expected.futureMedian[i]?.[share] ?? 0, share);
      }
    }
  });
});
