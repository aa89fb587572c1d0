import { expect, test } from "vitest";
import { levelPosterior } from "../../../../src/stats/level/levelPosterior.ts";
import { typicalError } from "../../../../src/stats/level/typicalError.ts";
import { falling, flat, sessionsOf } from "../../../support/levelSessions.ts";

const errorOf = (medians: readonly number[]) =>
  typicalError(levelPosterior({ sessions: sessionsOf(medians) }));
const spreadOut = (times: number) => flat(40).map((ms) => 90_000 + times * (ms - 90_000));

test("one session lies from the level as far as medians scatter about it, also while it falls", () => {
  for (const medians of [flat(40), falling(40)]) {
    const { typicalError: error } = errorOf(medians);
    expect(error).toBeGreaterThan(85);
    expect(error).toBeLessThan(145);
  }
});

test("what is worth talking about is a fifth of it, and never less than 0.1 % of the lap", () => {
  const wide = errorOf(spreadOut(6));
  expect(wide.typicalError).toBeGreaterThan(520);
  expect(wide.worthwhile).toBeCloseTo(wide.typicalError / 5, 9);
  expect(errorOf(flat(40)).worthwhile).toBeCloseTo(90, 0);
});
