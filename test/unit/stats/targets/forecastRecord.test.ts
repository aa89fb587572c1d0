import { expect, test } from "vitest";
import { brierScore, forecastRecord } from "#stats";

test("no forecasts have no record", () => {
  expect(brierScore([])).toBeUndefined();
  expect(forecastRecord([])).toBeUndefined();
});

test("said and came are counted by fifths, a chance of 1 in the last", () => {
  const record = forecastRecord([
    { chance: 0.1, reached: false },
    { chance: 0.9, reached: true },
    { chance: 1, reached: false },
  ]);
  expect(record).toMatchObject({ count: 3, reached: 1 });
  expect(record?.fifths).toEqual([
    { from: 0, to: 0.2, count: 1, said: 0.1, came: 0 },
    { from: 0.8, to: 1, count: 2, said: 0.95, came: 0.5 },
  ]);
});

test("when everything was reached there is no base rate to beat", () => {
  expect(forecastRecord([{ chance: 0.8, reached: true }])?.skill).toBeUndefined();
});

test("a chance outside 0 to 1 is named", () => {
  for (const chance of [Number.NaN, 1.2, -0.1]) {
    expect(() => brierScore([{ chance, reached: true }])).toThrow(/forecasts\[0\]\.chance/);
  }
});
