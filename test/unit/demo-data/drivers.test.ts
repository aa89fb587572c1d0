import { expect, test } from "vitest";
import {
  chanceFrom,
  type Driver,
  drawDriver,
  driverKinds,
  driveSession,
  normal,
  skewed,
  trueLevel,
} from "../../../demo-data/drivers.ts";

const driver: Driver = {
  kind: "exponential",
  baseMs: 90_000,
  span: 0.04,
  paceOfLearning: 100,
  exponent: 0,
  sessionShift: 0,
  lapNoise: 0,
};

test("true levels by hand", () => {
  expect(trueLevel(driver, 0)).toBe(93_600);
  expect(trueLevel(driver, 100)).toBe(91_800);
  expect(trueLevel({ ...driver, kind: "power", exponent: -1 }, 100)).toBe(91_800);
  expect(trueLevel({ ...driver, kind: "linear" }, 50)).toBe(91_800);
  expect(trueLevel({ ...driver, kind: "linear" }, 500)).toBe(90_000);
  expect(trueLevel({ ...driver, kind: "flat", span: 0 }, 500)).toBe(90_000);
  expect(trueLevel({ ...driver, kind: "stopped" }, 50)).toBe(91_800);
  expect(trueLevel({ ...driver, kind: "stopped" }, 150)).toBe(90_000);
  expect(trueLevel({ ...driver, kind: "slower" }, 0)).toBe(90_000);
  expect(trueLevel({ ...driver, kind: "slower" }, 50)).toBe(91_800);
  expect(trueLevel({ ...driver, kind: "slower" }, 500)).toBe(93_600);
});

test("who has stopped did so after 30 to 70 % of what is past", () => {
  for (let seed = 0; seed < 50; seed++) {
    const { paceOfLearning } = drawDriver("stopped", chanceFrom(seed), 200);
    expect(paceOfLearning).toBeGreaterThanOrEqual(60);
    expect(paceOfLearning).toBeLessThanOrEqual(140);
  }
});

test("a driver without noise drives the true level, and a shift moves every lap", () => {
  const chance = chanceFrom(1);
  const laps = driveSession(driver, { lapsBefore: 100, laps: 2, extra: 0.01 }, chance);
  expect(laps).toEqual([Math.round(91_800 + 900), Math.round(trueLevel(driver, 101) + 900)]);
});

test("noise has mean 0 and standard deviation 1, the skewed one a long upper end", () => {
  const chance = chanceFrom(2);
  for (const draw of [normal, skewed]) {
    const values = Array.from({ length: 20_000 }, () => draw(chance));
    const moment = (power: number) => values.reduce((sum, value) => sum + value ** power, 0) / values.length;
    expect(moment(1)).toBeCloseTo(0, 1);
    expect(moment(2)).toBeCloseTo(1, 1);
    expect(Math.abs(moment(3) - (draw === skewed ? Math.SQRT2 : 0))).toBeLessThan(0.2);
  }
});

test("the same seed draws the same driver, inside the stated ranges", () => {
  for (const kind of driverKinds) {
    expect(drawDriver(kind, chanceFrom(3))).toEqual(drawDriver(kind, chanceFrom(3)));
    for (let seed = 0; seed < 50; seed++) {
      const { baseMs, span, sessionShift, lapNoise } = drawDriver(kind, chanceFrom(seed));
      expect(baseMs).toBeGreaterThanOrEqual(60_000);
      expect(baseMs).toBeLessThanOrEqual(150_000);
      expect(span).toBeLessThanOrEqual(0.1);
      const least = { flat: 0, stopped: 0.005, slower: 0.005, exponential: 0.01, power: 0.01, linear: 0.01 };
      expect(span).toBeGreaterThanOrEqual(least[kind]);
      expect(sessionShift).toBeLessThanOrEqual(0.005);
      expect(lapNoise).toBeLessThanOrEqual(0.008);
    }
  }
});
