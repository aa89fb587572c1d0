import { expect, test } from "vitest";
import { typicalError } from "../../../../src/stats/level/typicalError.ts";
import { aPosterior } from "./aPosterior.ts";

test("is the root of the mean variance, and worth talking about is a fifth or 0.1 % of the lap", () => {
  const errorOf = (...sigmas: number[]) =>
    typicalError(aPosterior(sigmas.map((sigma) => ({ sigma, weight: 1 / sigmas.length }))));
  expect(errorOf(0.002, 0.004).typicalError).toBeCloseTo(90_000 * Math.sqrt(1e-5), 9);
  expect(errorOf(0.002, 0.004).worthwhile).toBe(90);
  expect(errorOf(0.008).typicalError).toBeCloseTo(720, 9);
  expect(errorOf(0.008).worthwhile).toBeCloseTo(144, 9);
});
