import { describe, expect, test } from "vitest";
import { driverKinds } from "../../demo-data/drivers.ts";
import { firstVersion } from "./firstVersion.ts";
import {
  brierShare,
  fifths,
  inBand,
  outcomesOf,
  type SaidAndCame,
  saidHalf,
  shareOf,
  standardErrorOf,
} from "./scores.ts";
import { groups, horizons, simulate, type Told } from "./simulate.ts";

/**
 * A slice of the table that `npm run bench -- calibration` prints: fixed seed, fewer drivers and draws. Its limits are those of
 * our methods, §5 and §6, two standard errors wider. What is said of one driver counts as one observation, however much it is.
 */
const trial = { drivers: 40, targetsEach: 8, draws: 250, seed: 731 };
const standardErrors = (share: number, count: number) => 2 * Math.sqrt((share * (1 - share)) / count);
const all = trial.drivers * driverKinds.length;
/** Targets of one driver come true together: so many of them are worth one that stands alone. */
const TOGETHER = 4;

function expectNear({ said, came, count }: SaidAndCame, limit: number) {
  if (count === 0) return;
  expect(Math.abs(came - said)).toBeLessThanOrEqual(limit + standardErrors(0.5, count / TOGETHER));
}

describe.each([3, 5, 8, 12, 20, 40])("after %i sessions", (sessions) => {
  const told = simulate({ ...trial, sessions });
  const of = (kind: string) => told.filter((one) => one.kind === kind);

  test.each(driverKinds)("nine in ten later medians of %s drivers lie in the 90 % band", (kind) => {
    const least = sessions < 8 ? 0.8 : 0.85;
    for (const within of horizons) {
      const share = shareOf(inBand(of(kind), within));
      expect(share).toBeGreaterThanOrEqual(least - standardErrors(least, trial.drivers));
      if (sessions >= 8) expect(share).toBeLessThanOrEqual(0.97 + standardErrors(0.97, trial.drivers));
    }
  });

  test("forecasts of best laps tell more than the base rate, and more than the first version's did", () => {
    for (const within of horizons) {
      const brier = (of: readonly Told[]) => brierShare(outcomesOf(of, within));
      const before = firstVersion.brier[within][sessions] ?? 1;
      expect(brier(told)).toBeLessThanOrEqual(before + 2 * standardErrorOf(told, brier));
    }
  });

  if (sessions >= 12)
    test("chances come true as often as they say, within 0.10 in each fifth", () => {
      for (const within of horizons)
        for (const fifth of fifths(outcomesOf(told, within))) expectNear(fifth, 0.1);
    });

  if (sessions >= 8)
    test("what is said as one half comes true in about half, where times fell and where they are level", () => {
      for (const within of horizons)
        for (const group of groups.filter((name) => name !== "rose")) {
          const these = told.filter((one) => one.group === group);
          expectNear(saidHalf(outcomesOf(these, within)), 0.15);
        }
    });

  if (sessions >= 8)
    test.each(driverKinds)(
      "the change of level of %s drivers lies in its interval, seldom the wrong way",
      (kind) => {
        const held = shareOf(of(kind).map(({ isChangeHeld }) => isChangeHeld));
        const wrong = shareOf(of(kind).map(({ isWrongWay }) => isWrongWay));
        expect(held).toBeGreaterThanOrEqual(0.8 - standardErrors(0.8, trial.drivers));
        expect(wrong).toBeLessThanOrEqual(0.05 + standardErrors(0.05, trial.drivers));
      },
    );

  if (sessions >= 20)
    test("whoever is said to move no longer mostly does not", () => {
      const said = told.filter(({ isSaidLevel }) => isSaidLevel);
      expect(said.length).toBeGreaterThan(all / 4);
      expect(shareOf(said.map(({ isLevel }) => isLevel))).toBeGreaterThan(0.75);
    });
});
