import { describe, expect, test } from "vitest";
import { gainForShare, headroomDecibels, rimForce } from "#physics";
import data from "./decibel-and-tails.json";

const { decibel, gainFactorFromShareAtLimit, torque } = data.expected;
const near = (value: number, wanted: number) =>
  expect(Math.abs(value - wanted)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(wanted)));

describe("force feedback against ISO 80000-3 and quantiles by R", () => {
  test("headroom is the level of limit over peak", () => {
    for (const { ratio, dB } of decibel) near(headroomDecibels({ peak: 1, limit: ratio }), dB);
  });

  test("the gain from the share at the limit spans the exponential and the half-normal tail", () => {
    for (const {
      observedShare,
      wantedShare,
      exponentialTail,
      halfNormalTail,
    } of gainFactorFromShareAtLimit) {
      const range = gainForShare({ gain: 60, share: observedShare, wanted: wantedShare });
      if (!range.known) throw new Error(JSON.stringify(range.reason));
      near(range.low / 60, exponentialTail);
      near(range.high / 60, halfNormalTail);
    }
  });

  test("force at the rim is torque over radius", () => {
    for (const { torqueNm, rimRadiusM, forceN } of torque) {
      const force = rimForce({ torque: torqueNm, radius: rimRadiusM });
      near(force.known ? force.value : Number.NaN, forceN);
    }
  });
});
