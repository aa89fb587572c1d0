/** The figures against two general-purpose libraries on random data, seeds fixed. */
import chiSquaredOracle from "@stdlib/stats-base-dists-chisquare-quantile";
import normalOracle from "@stdlib/stats-base-dists-normal-quantile";
import tOracle from "@stdlib/stats-base-dists-t-quantile";
import wilcoxonOracle from "@stdlib/stats-wilcoxon";
import { mean as d3Mean, median as d3Median, quantile as d3Quantile, deviation } from "d3-array";
import fc from "fast-check";
import {
  linearRegression,
  sampleStandardDeviation,
  medianAbsoluteDeviation as ssDeviation,
  mean as ssMean,
  quantile as ssQuantile,
} from "simple-statistics";
import { expect, it } from "vitest";
import { chiSquaredQuantile, normalQuantile, studentTQuantile } from "#numbers";
import {
  linearFit,
  mean,
  median,
  medianAbsoluteDeviation,
  pairedTTest,
  quantile,
  signedRankTest,
  standardDeviation,
} from "#stats";

const laps = fc.array(fc.integer({ min: 20_000, max: 600_000 }), { minLength: 2, maxLength: 80 });
const share = fc.double({ min: 0.0001, max: 0.9999, noNaN: true });
const degrees = fc.integer({ min: 1, max: 200 });
const runs = { seed: 20_261, numRuns: 300 };

function expectSame(actual: number | undefined, wanted: number | undefined, tolerance = 1e-11) {
  const [a, b] = [actual ?? Number.NaN, wanted ?? Number.NaN];
  expect(Math.abs(a - b)).toBeLessThanOrEqual(tolerance * Math.max(1, Math.abs(b)));
}

it("mean, median and deviation agree with d3-array", () => {
  fc.assert(
    fc.property(laps, (values) => {
      expectSame(mean(values), d3Mean(values));
      expectSame(median(values), d3Median(values));
      expectSame(standardDeviation(values), deviation(values), 1e-9);
    }),
    runs,
  );
});

it("quantiles agree with d3-array, which takes type 7 too", () => {
  fc.assert(
    fc.property(laps, share, (values, p) => expectSame(quantile(values, p), d3Quantile(values, p))),
    runs,
  );
});

it("mean, deviations and line agree with simple-statistics", () => {
  fc.assert(
    fc.property(laps, (values) => {
      expectSame(mean(values), ssMean(values));
      expectSame(standardDeviation(values), sampleStandardDeviation(values), 1e-9);
      expectSame(medianAbsoluteDeviation(values), 1.4826 * ssDeviation(values));
      const line = linearRegression(values.map((ms, index) => [index, ms]));
      const fit = linearFit([...values.keys()], values);
      expectSame(fit?.slope, line.m, 1e-8);
      expectSame(fit?.intercept, line.b, 1e-9);
    }),
    runs,
  );
});

it("the median is the half quantile of simple-statistics for an odd number of values", () => {
  fc.assert(
    fc.property(
      laps.filter((values) => values.length % 2 === 1),
      (values) => expectSame(median(values), ssQuantile(values, 0.5)),
    ),
    runs,
  );
});

it("quantiles of the distributions agree with stdlib", () => {
  fc.assert(
    fc.property(share, degrees, (p, df) => {
      expectSame(normalQuantile(p), normalOracle(p, 0, 1), 1e-12);
      expectSame(studentTQuantile(p, df), tOracle(p, df), 1e-10);
      expectSame(chiSquaredQuantile(p, df), chiSquaredOracle(p, df), 1e-10);
    }),
    runs,
  );
});

/** stdlib does not cut twice a tail of one half and more down to 1. */
it("the signed-rank test agrees with stdlib, exact and with ties", () => {
  const differences = fc.array(
    fc.integer({ min: -300, max: 300 }).filter((value) => value !== 0),
    {
      minLength: 6,
      maxLength: 30,
    },
  );
  fc.assert(
    fc.property(differences, (values) => {
      const test = signedRankTest(values, 0.9);
      const oracle = wilcoxonOracle(values, { exact: test?.exact === true, correction: true });
      expectSame(test?.p, Math.min(1, oracle.pValue), 1e-9);
    }),
    runs,
  );
});

it("a paired t test and its own interval agree: zero at the limit gives the level as p", () => {
  fc.assert(
    fc.property(laps, (values) => {
      const test = pairedTTest(values, 0.9);
      fc.pre(test !== undefined);
      const moved = pairedTTest(
        values.map((value) => value - (test?.low ?? 0)),
        0.9,
      );
      expectSame(moved?.p, 0.1, 1e-6);
    }),
    runs,
  );
});
