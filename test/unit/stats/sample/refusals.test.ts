import { expect, it } from "vitest";
import { lag1Autocorrelation, linearFit, theilSen, wilsonInterval } from "#stats";

it.each([
  [1, -1, "trials is -1: a whole number from 0 is needed"],
  [1, 2.5, "trials is 2.5: a whole number from 0 is needed"],
  [-1, 3, "successes is -1: a whole number from 0 to 3 is needed"],
  [1.5, 3, "successes is 1.5: a whole number from 0 to 3 is needed"],
  [4, 3, "successes is 4: a whole number from 0 to 3 is needed"],
])("%d clean laps of %d are refused by what is wrong with them", (successes, trials, message) => {
  expect(() => wilsonInterval(successes, trials, 0.9)).toThrow(new RangeError(message));
});

it("a share of none and of all keeps to 0 and 1, and no trials have no share", () => {
  expect(wilsonInterval(0, 7, 0.9)?.low).toBe(0);
  expect(wilsonInterval(7, 7, 0.9)?.high).toBe(1);
  expect(wilsonInterval(0, 0, 0.9)).toBeUndefined();
  expect(() => wilsonInterval(1, 2, 1)).toThrow(/^confidence is 1/);
});

it("a line names the column in which a value is no number, and the confidence that is none", () => {
  for (const line of [linearFit, (x: number[], y: number[]) => theilSen(x, y, 0.9)]) {
    expect(() => line([1, Number.NaN], [1, 2])).toThrow(/^x\[1\] is NaN/);
    expect(() => line([1, 2], [Number.NaN, 2])).toThrow(/^y\[0\] is NaN/);
    expect(() => line([1, 2, 3], [1, 2])).toThrow(/x has 3 values and y has 2/);
  }
  expect(() => theilSen([1, 2], [1, 2], 0)).toThrow(/^confidence is 0/);
});

it("a line by least squares by hand: what needs more points than there are is not known", () => {
  // y = 1, 3, 4 over 0, 1, 2: slope 3/2, intercept 7/6, residuals −1/6, 1/3, −1/6, their squares 1/6 with one degree
  // of freedom; Σ(x − 1)² = 2, Σ(y − 8/3)² = 14/3.
  const fit = linearFit([0, 1, 2], [1, 3, 4]);
  expect(fit?.slope).toBeCloseTo(3 / 2, 12);
  expect(fit?.intercept).toBeCloseTo(7 / 6, 12);
  expect(fit?.residualSD).toBeCloseTo(Math.sqrt(1 / 6), 12);
  expect(fit?.slopeSE).toBeCloseTo(Math.sqrt(1 / 12), 12);
  expect(fit?.interceptSE).toBeCloseTo(Math.sqrt((1 / 6) * (1 / 3 + 1 / 2)), 12);
  expect(fit?.rSquared).toBeCloseTo(27 / 28, 12);
  expect(linearFit([0, 1], [1, 3])).toMatchObject({ slope: 2, residualSD: undefined, slopeSE: undefined });
  expect(linearFit([0, 1, 2], [5, 5, 5])).toMatchObject({ slope: 0, rSquared: undefined, slopeSE: 0 });
});

it("two values have an autocorrelation of one half below 0, one and equal ones have none", () => {
  expect(lag1Autocorrelation([1, 3])).toBe(-0.5);
  expect(lag1Autocorrelation([])).toBeUndefined();
  expect(lag1Autocorrelation([1])).toBeUndefined();
  expect(lag1Autocorrelation([2, 2])).toBeUndefined();
});

it("ties in x narrow Sen's interval, by hand: equal evenings are no pairs", () => {
  // Twelve slopes, 1 2 3 3 3 3.5 4 5 5.5 6 8 10. Variance (510 − 3·18)/18 = 25.3, reach 1.645·5.03 = 8.28 of ranks:
  // from the second to the second last. Without the ties it would be from the first to the last.
  expect(theilSen([0, 0, 1, 1, 2, 2], [1, 2, 3, 5, 8, 13], 0.9)).toMatchObject({
    low: 2,
    slope: 3.75,
    high: 8,
  });
  expect(theilSen([3, 1, 2], [7, 7, 7], 0.9)).toEqual({ slope: 0, intercept: 7, low: 0, high: 0 });
});
