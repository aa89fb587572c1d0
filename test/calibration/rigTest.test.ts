import { expect, test } from "vitest";
import type { RigTest, Run } from "#domain";
import { median } from "#numbers";
import { orderedPairsTTest, pairOrder, pairsNeeded, rigTestReport, successiveScatter } from "#stats";
import { type Chance, chanceFrom, normal, skewed } from "../../demo-data/drivers.ts";
import { aRigTest, aTestRun } from "../unit/stats/rigTests/aRigTest.ts";
import { choices } from "../unit/stats/someRows.ts";

const drivers = 2000;
const level = 0.1;
const power = 0.8;
const confidence = 1 - level;
/** Two standard errors of a share as seen in so many drivers. */
const errorOf = (share: number) => 2 * Math.sqrt((share * (1 - share)) / drivers);
/** Inside a pair, what is driven second gains so many σ_d: learning, track, tyres. */
const drifts = [0, 0.5, 1, 2];

const lapMs = 85_000;
const lapsARun = 6;
/** ms: how far a run lies from the driver's level of the evening, and how far its laps differ. */
const runShift = 100;
const lapNoise = 300;

const lapsOf = (chance: Chance, shift: number, noise: number) =>
  Array.from({ length: lapsARun }, () => lapMs + shift + noise * skewed(chance));

const figures = {
  usual: (laps: readonly number[]) => median(laps) as number,
  scatter: (laps: readonly number[]) => successiveScatter([laps]) as number,
} as const;
type Figure = keyof typeof figures;

/** One run: its figure, with what the setting and the drift add to it. */
function aRun(chance: Chance, figure: Figure, more: number): number {
  const shift = runShift * normal(chance);
  if (figure === "usual") return figures.usual(lapsOf(chance, shift + more, lapNoise));
  return figures.scatter(lapsOf(chance, shift, lapNoise)) + more;
}

/** Standard deviation of the difference of two neighbouring runs without drift, from 4,000 pairs. */
function spreadOf(figure: Figure): number {
  const chance = chanceFrom(7001);
  const differences = Array.from({ length: 4000 }, () => aRun(chance, figure, 0) - aRun(chance, figure, 0));
  return Math.sqrt(differences.reduce((sum, ms) => sum + ms * ms, 0) / differences.length);
}

/** The share of drivers whose test claims a difference, and of those the wrong one. */
function claims(figure: Figure, pairs: number, effect: number, drift: number, seed: number) {
  let claimed = 0;
  let wrong = 0;
  for (let driver = 0; driver < drivers; driver++) {
    const chance = chanceFrom(seed + 7919 * driver);
    const order = pairOrder(pairs, seed + driver);
    const found = orderedPairsTTest(
      order.map((first) => {
        const one = aRun(chance, figure, first === "A" ? 0 : effect);
        const two = aRun(chance, figure, (first === "A" ? effect : 0) - drift);
        return { first, difference: first === "A" ? two - one : one - two };
      }),
      confidence,
    );
    if (found === undefined) throw new Error("Simulated runs always differ.");
    if (found.high < 0 || found.low > 0) claimed++;
    if (effect < 0 ? found.low > 0 : found.high < 0) wrong++;
  }
  return { claimed: claimed / drivers, wrong: wrong / drivers };
}

for (const figure of ["usual", "scatter"] as const) {
  const spread = spreadOf(figure);
  /** From a test of the fewest pairs to one of the most that is worth driving. */
  for (const share of [1.25, 0.8, 0.58]) {
    const difference = share * spread;
    const pairs = pairsNeeded({ difference, standardDeviation: spread, power, level });

    test.each(drifts)(
      `no difference of the ${figure} is claimed at its rate: ${pairs} pairs, drift %d σ_d`,
      (drift) => {
        const { claimed } = claims(figure, pairs, 0, drift * spread, 1000 + 100 * pairs + 10 * drift);
        expect(claimed).toBeLessThanOrEqual(level + errorOf(level));
        expect(claimed).toBeGreaterThanOrEqual(level - 2 * errorOf(level));
      },
    );

    test.each(drifts)(
      `the planned difference of the ${figure} is found: ${pairs} pairs, drift %d σ_d`,
      (drift) => {
        const { claimed, wrong } = claims(
          figure,
          pairs,
          -difference,
          drift * spread,
          5000 + 100 * pairs + 10 * drift,
        );
        expect(claimed).toBeGreaterThanOrEqual(power - 0.05);
        expect(wrong).toBeLessThanOrEqual(0.005);
      },
    );
  }
}

/** A whole test as rows, with laps in whole ms. */
function wholeTest(seed: number, effect: number): { readonly test: RigTest; readonly runs: readonly Run[] } {
  const chance = chanceFrom(seed);
  const order = pairOrder(8, seed);
  const runs = order.flatMap((first, pair) =>
    [first, first === "A" ? "B" : "A"].map((side, n) => {
      const shift = runShift * normal(chance) + (side === "B" ? effect : 0);
      const laps = lapsOf(chance, shift, lapNoise).map(Math.round);
      return aTestRun(pair, n + 1, `${pair + 1}${side}`, laps);
    }),
  );
  return { test: aRigTest(order.join("")), runs };
}

test("the same holds of the verdict as it is read from rows: claims at the rate, and nine in ten intervals hold the truth", () => {
  const many = 200;
  const read = (effect: number) =>
    Array.from({ length: many }, (_, n) => {
      const { test: planned, runs } = wholeTest(9000 + 7919 * n, effect);
      const { verdict } = rigTestReport(planned, runs, choices);
      if (!verdict.known) throw new Error("All pairs are driven.");
      return verdict.value;
    });
  const error = 2 * Math.sqrt((0.1 * 0.9) / many);
  expect(
    read(0).filter(({ finding }) => finding !== "no clear difference").length / many,
  ).toBeLessThanOrEqual(level + error);
  const held = read(-200).filter(({ low, high }) => low <= -200 && -200 <= high);
  expect(held.length / many).toBeGreaterThanOrEqual(confidence - error);
});
