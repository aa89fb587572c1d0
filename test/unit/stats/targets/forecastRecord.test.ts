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
  // By hand: squares of 0.1, 0.1 and 1 against a third times two thirds.
  expect(record).toMatchObject({
    count: 3,
    reached: 1,
    score: expect.closeTo(0.34, 12),
    baseScore: expect.closeTo(2 / 9, 12),
    skill: expect.closeTo(-0.53, 12),
  });
  expect(record?.fifths).toEqual([
    { from: 0, to: 0.2, count: 1, said: 0.1, came: 0 },
    { from: 0.8, to: 1, count: 2, said: 0.95, came: 0.5 },
  ]);
});

test("those told as the same number in 20 stand together", () => {
  const record = forecastRecord([
    { chance: 0.199, reached: false },
    { chance: 0.2, reached: false },
  ]);
  expect(record?.fifths.map(({ from, count }) => [from, count])).toEqual([[0.2, 2]]);
});

test("when everything was reached there is no base rate to beat", () => {
  expect(forecastRecord([{ chance: 0.8, reached: true }])?.skill).toBeUndefined();
});

test("a chance outside 0 to 1 is named", () => {
  for (const chance of [Number.NaN, 1.2, -0.1]) {
    expect(() => brierScore([{ chance, reached: true }])).toThrow(/forecasts\[0\]\.chance/);
    const second = [
      { chance: 0, reached: false },
      { chance, reached: true },
    ];
    expect(() => brierScore(second)).toThrow(new RegExp(`forecasts\\[1\\]\\.chance is ${chance}`));
  }
});

test("a chance of 0 and one of 1 are chances, and each fifth begins with its lowest", () => {
  const sure = [
    { chance: 0, reached: false },
    { chance: 1, reached: true },
  ];
  expect(brierScore(sure)).toBe(0);
  expect(brierScore([{ chance: 0.7, reached: true }])).toBeCloseTo(0.09, 12);
  const fifths = forecastRecord([0.2, 0.37, 0.4, 0.6].map((chance) => ({ chance, reached: false })))?.fifths;
  expect(fifths?.map(({ from, count }) => [from, count])).toEqual([
    [0.2, 2],
    [0.4, 1],
    [0.6, 1],
  ]);
});
