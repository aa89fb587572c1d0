import { describe, expect, it } from "vitest";
import {
  mean,
  medianAbsoluteDeviation,
  quantile,
  standardDeviation,
  successiveScatter,
  summary,
} from "#stats";
import reference from "./quantiles-spread.json" with { type: "json" };

type Name = keyof typeof reference.data;
const names = Object.keys(reference.data) as Name[];

describe.each(names)("quantiles and spread of %s, computed with R 4.2.2", (name) => {
  const values = reference.data[name];
  const { computedWithR } = reference.expected[name];

  it("quantiles of type 7 (Hyndman & Fan 1996)", () => {
    computedWithR.p.forEach((p, index) => {
      expect(quantile(values, p)).toBeCloseTo(computedWithR.type7[index] ?? Number.NaN, 9);
    });
  });

  it("mean, deviations and scatter", () => {
    expect(mean(values)).toBeCloseTo(computedWithR.mean, 9);
    expect(medianAbsoluteDeviation(values)).toBeCloseTo(computedWithR.scaledMad, 9);
    for (const [actual, wanted] of [
      [standardDeviation(values), computedWithR.sd],
      [successiveScatter([values]), computedWithR.scatter],
    ] as const) {
      if (wanted === null) expect(actual).toBeUndefined();
      else expect((actual ?? Number.NaN) / wanted).toBeCloseTo(1, 11);
    }
  });

  it("interquartile range of the summary", () => {
    const figures = summary(values);
    const range = (figures?.upperQuartile ?? Number.NaN) - (figures?.lowerQuartile ?? 0);
    expect(range).toBeCloseTo(computedWithR.iqr, 9);
  });
});

it("the rule of e-Handbook 7.2.6.2 is another one than type 7", () => {
  const { published, computedWithR } = reference.expected.resistivity;
  expect(computedWithR.type6[6]).toBeCloseTo(published.percentile90_nPlus1Rule, 3);
  expect(quantile(reference.data.resistivity, 0.9)).not.toBeCloseTo(published.percentile90_nPlus1Rule, 3);
});
