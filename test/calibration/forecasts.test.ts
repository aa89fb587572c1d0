import { describe, expect, test } from "vitest";
import { brierShare, fifths, type Outcome, shareOf, simulate } from "./simulate.ts";

/**
 * Simulated drivers (flat, exponential, power, linear improvers, as many of each), fixed seed, 300 draws a forecast
 * instead of 2,000 (which adds at most 0.03 of noise to a chance). The limits are those of our methods, §6.
 * With three sessions the bands of slow, steady improvers are wider than need be: 0.96–0.98, depending on the seed.
 */
const trial = { drivers: 260, targetsEach: 6, draws: 300, seed: 11 };

function expectTrueChances(outcomes: readonly Outcome[]) {
  for (const { count, said, came } of fifths(outcomes)) {
    expect(count).toBeGreaterThanOrEqual(400);
    expect(Math.abs(came - said)).toBeLessThanOrEqual(0.1);
  }
}

describe.each([3, 5, 8, 12, 20])("forecasts of a best lap after %i sessions", (sessions) => {
  const { held, outcomes } = simulate({ ...trial, sessions });

  test("nine in ten later medians lie in the 90 % band, for each kind of driver", () => {
    for (const [kind, ahead] of held) {
      const share = shareOf(ahead.flat());
      expect(share, kind).toBeGreaterThanOrEqual(0.85);
      expect(share, kind).toBeLessThanOrEqual(0.97);
    }
  });

  test("chances come true as often as they say, within 0.10 in each fifth", () => {
    expectTrueChances(outcomes);
  });

  const limit = sessions < 5 ? 1 : 0.65;
  test(`they tell more than the base rate: Brier score at most ${limit} of its`, () => {
    expect(brierShare(outcomes)).toBeLessThanOrEqual(limit);
  });
});

describe.each([5, 12])("forecasts of a median after %i sessions", (sessions) => {
  test("chances come true as often as they say, and tell much more than the base rate", () => {
    const { outcomes } = simulate({ ...trial, sessions, targets: "median" });
    expectTrueChances(outcomes);
    expect(brierShare(outcomes)).toBeLessThanOrEqual(0.65);
  });
});
