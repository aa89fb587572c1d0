import { describe, expect, test } from "vitest";
import { brierScore } from "../../../src/stats/targets/brierScore.ts";
import { forecastRecord } from "../../../src/stats/targets/forecastRecord.ts";
import reference from "./brier-score.json";

const { data, expected } = reference;
const forecastsOf = ({ p, outcome }: { p: number[]; outcome: number[] }) =>
  p.map((chance, i) => ({ chance, reached: outcome[i] === 1 }));

describe("Brier score against Brier 1950 and the scikit-learn documentation", () => {
  test("single forecasts", () => {
    for (const { p, outcome, brier } of expected.single) {
      expect(brierScore([{ chance: p, reached: outcome === 1 }])).toBeCloseTo(brier, 12);
    }
  });

  test.each(["four", "ten"] as const)("%s forecasts, against the base rate", (name) => {
    const record = forecastRecord(forecastsOf(data[name]));
    expect(record?.score).toBeCloseTo(expected[name].brier, 12);
    expect(record?.baseScore).toBeCloseTo(expected[name].brierOfBaseRate, 12);
    expect(record?.skill).toBeCloseTo(expected[name].skill, 12);
  });

  test("the printed 0.037 is cut, not rounded", () => {
    const score = brierScore(forecastsOf(data.four)) ?? 0;
    expect(Math.floor(score * 1000) / 1000).toBe(expected.four.printed);
  });
});
