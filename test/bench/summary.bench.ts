/** Mean, deviation, quartiles and median deviation of 100,000 laps: this app and two general-purpose libraries. */
import { mean as d3Mean, median as d3Median, quantile as d3Quantile, deviation } from "d3-array";
import { mean, medianAbsoluteDeviation, quantile, sampleStandardDeviation } from "simple-statistics";
import { bench, describe } from "vitest";
import { summary } from "#stats";
import { normalAt } from "../../src/stats/random/draws.ts";

const laps = Array.from({ length: 100_000 }, (_, lap) => Math.round(84_000 + 400 * normalAt(1, lap)));

describe("the usual figures of 100,000 laps", () => {
  bench("this app", () => {
    summary(laps);
  });

  bench("simple-statistics", () => {
    mean(laps);
    sampleStandardDeviation(laps);
    quantile(laps, [0.25, 0.5, 0.75]);
    medianAbsoluteDeviation(laps);
  });

  bench("d3-array", () => {
    d3Mean(laps);
    deviation(laps);
    d3Quantile(laps, 0.25);
    d3Quantile(laps, 0.75);
    const middle = d3Median(laps) ?? 0;
    d3Median(laps, (lap) => Math.abs(lap - middle));
  });
});
