import { describe, expect, it } from "vitest";
import { studentTQuantile } from "#numbers";
import {
  linearFit,
  mannKendall,
  median,
  medianAbsoluteDeviation,
  standardDeviation,
  successiveScatter,
  theilSen,
} from "#stats";
import reference from "./reaction-times-sleepstudy.json" with { type: "json" };

const { days, reactionMs } = reference.data;
const { pooledAll18: _, ...people } = reference.expected;
const times = reactionMs as Readonly<Record<string, number[]>>;

describe.each(Object.entries(people))("subject %s, computed with R 4.2.2", (subject, wanted) => {
  const values = times[subject] as number[];

  it("line with its interval", () => {
    const fit = linearFit(days, values);
    const reach = (fit?.slopeSE ?? Number.NaN) * studentTQuantile(0.95, days.length - 2);
    expect((fit?.intercept ?? Number.NaN) / wanted.olsIntercept).toBeCloseTo(1, 9);
    expect((fit?.slope ?? Number.NaN) / wanted.olsSlope).toBeCloseTo(1, 9);
    expect((fit?.slope ?? Number.NaN) - reach).toBeCloseTo(wanted.olsSlopeLow90, 7);
    expect((fit?.slope ?? Number.NaN) + reach).toBeCloseTo(wanted.olsSlopeHigh90, 7);
    expect((fit?.residualSD ?? Number.NaN) / wanted.residualStandardDeviation).toBeCloseTo(1, 9);
  });

  it("trend", () => {
    const test = mannKendall(values);
    expect(theilSen(days, values, 0.9)?.slope).toBeCloseTo(wanted.theilSenSlope, 9);
    expect(test?.s).toBe(wanted.mannKendallS);
    expect(test?.p).toBeCloseTo(wanted.mannKendallExactPTwoSided, 9);
  });

  it("spread", () => {
    expect(median(values)).toBeCloseTo(wanted.median, 9);
    expect(standardDeviation(values)).toBeCloseTo(wanted.sd, 9);
    expect(medianAbsoluteDeviation(values)).toBeCloseTo(wanted.scaledMad, 9);
    expect(successiveScatter([values])).toBeCloseTo(wanted.scatter, 9);
  });
});
