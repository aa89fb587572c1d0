import { describe, expect, it } from "vitest";
import {
  chiSquaredCdf,
  chiSquaredQuantile,
  normalCdf,
  normalQuantile,
  studentTCdf,
  studentTQuantile,
} from "#numbers";
import { chiSquaredAt, normalAt } from "../../../src/stats/random/draws.ts";
import reference from "./distribution-quantiles.json" with { type: "json" };

const { data, expected } = reference;

function expectNear(actual: number, wanted: number) {
  expect(Math.abs(actual - wanted)).toBeLessThanOrEqual(1e-10 * Math.abs(wanted));
}

describe("R 4.2.2", () => {
  it("normal quantiles, both tails", () => {
    data.normalP.forEach((p, index) => {
      expectNear(normalQuantile(p), expected.normalQuantiles[index] ?? Number.NaN);
      expect(normalQuantile(1 - p)).toBeCloseTo(-(expected.normalQuantiles[index] ?? Number.NaN), 10);
    });
  });

  it("normal shares, small tails with all their digits", () => {
    expected.normalCdf.x.forEach((x, index) => {
      expectNear(normalCdf(x), expected.normalCdf.p[index] ?? Number.NaN);
    });
  });

  it.each(expected.tQuantiles)("t quantiles and shares, $df degrees of freedom", ({ df, q }) => {
    q.forEach((quantile, index) => {
      const p = data.tP[index] ?? Number.NaN;
      expectNear(studentTQuantile(p, df), quantile);
      expectNear(studentTQuantile(1 - p, df), -quantile);
      expectNear(studentTCdf(quantile, df), p);
    });
  });

  it.each(expected.chiSquaredQuantiles)("chi-squared, $df degrees of freedom", ({ df, q }) => {
    q.forEach((quantile, index) => {
      const p = data.chiP[index] ?? Number.NaN;
      expectNear(chiSquaredQuantile(p, df), quantile);
      expectNear(chiSquaredCdf(quantile, df), p);
    });
  });

  it.each(expected.scaledInverseChiSquared)(
    "scaled inverse chi-squared, $df and $scale",
    ({ df, scale, quantiles }) => {
      for (const [p, variance] of Object.entries(quantiles)) {
        expectNear((df * scale ** 2) / chiSquaredQuantile(1 - Number(p), df), variance);
      }
    },
  );
});

it("the usual printed values of the e-Handbook's tables", () => {
  const { z95, z975, t975df9, t975df14, chi2_95df3 } = expected.printed;
  expect(normalQuantile(0.95)).toBeCloseTo(z95, 3);
  expect(normalQuantile(0.975)).toBeCloseTo(z975, 3);
  expect(studentTQuantile(0.975, 9)).toBeCloseTo(t975df9, 3);
  expect(studentTQuantile(0.975, 14)).toBeCloseTo(t975df14, 3);
  expect(chiSquaredQuantile(0.95, 3)).toBeCloseTo(chi2_95df3, 3);
});

it("a normal draw over a chi-squared one is Student t: shares below its quantiles", () => {
  const draws = 20_000;
  for (const [df, scale, p, limit] of [
    [3, 336, 0.95, expected.studentMixture.df3_scale336_q95],
    [7, 250, 0.9, expected.studentMixture.df7_scale250_q90],
  ] as const) {
    let below = 0;
    for (let draw = 0; draw < draws; draw++) {
      const sigma = scale * Math.sqrt(df / chiSquaredAt(df, 17, draw, 0));
      if (sigma * normalAt(17, draw, 1) < limit) below++;
    }
    expect(Math.abs(below / draws - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / draws));
  }
});
