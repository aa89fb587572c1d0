import { describe, expect, it } from "vitest";
import { mannKendall, theilSen } from "#stats";
import reference from "./mann-kendall-theil-sen.json" with { type: "json" };

interface Interval {
  readonly scipyTheilslopes: { readonly low: number; readonly high: number };
}
interface Case {
  readonly n: number;
  readonly S: number;
  readonly tauB: number;
  readonly zContinuityCorrected: number;
  readonly pTwoSidedNormal: number;
  readonly pTwoSidedExact?: number;
  readonly theilSenSlope: number;
  readonly interceptMedianYminusSlopeMedianT: number;
  readonly senInterval: Readonly<Record<"90" | "95", Interval>>;
}

const cases = reference.expected as unknown as Readonly<Record<string, Case>>;
const data = reference.data as Readonly<Record<string, { readonly t: number[]; readonly y: number[] }>>;

describe.each(Object.keys(cases))("%s", (name) => {
  const wanted = cases[name] as Case;
  const { t, y } = data[name] as { t: number[]; y: number[] };

  it("Mann–Kendall as R 4.2.2 cor.test", () => {
    const test = mannKendall(y);
    const isExact = wanted.n <= 10 && wanted.pTwoSidedExact !== undefined;
    expect(test?.s).toBe(wanted.S);
    expect(test?.tau).toBeCloseTo(wanted.tauB, 10);
    expect(test?.z).toBeCloseTo(wanted.zContinuityCorrected, 9);
    expect(test?.exact).toBe(isExact);
    expect(test?.p).toBeCloseTo(isExact ? (wanted.pTwoSidedExact ?? Number.NaN) : wanted.pTwoSidedNormal, 8);
  });

  it.each(["90", "95"] as const)("Theil–Sen as scipy 1.10.1 theilslopes, %s %%", (percent) => {
    const line = theilSen(t, y, Number(percent) / 100);
    const { low, high } = wanted.senInterval[percent].scipyTheilslopes;
    const tolerance = 1e-9 * Math.max(...y.map(Math.abs));
    expect(Math.abs((line?.slope ?? Number.NaN) - wanted.theilSenSlope)).toBeLessThan(tolerance);
    const intercept = line?.intercept ?? Number.NaN;
    expect(Math.abs(intercept - wanted.interceptMedianYminusSlopeMedianT)).toBeLessThan(tolerance);
    expect(Math.abs((line?.low ?? Number.NaN) - low)).toBeLessThan(tolerance);
    expect(Math.abs((line?.high ?? Number.NaN) - high)).toBeLessThan(tolerance);
  });
});

it("tuna data as printed on the R help page of cor.test", () => {
  const test = mannKendall(reference.data.tuna.y);
  expect(test?.tau).toBeCloseTo(0.4444444, 7);
  expect((test?.p ?? Number.NaN) / 2).toBeCloseTo(0.05972, 5);
});

it("Theil's example as printed by Hollander & Wolfe 1973", () => {
  const test = mannKendall(reference.data.cloudSeeding.y);
  expect(test?.s).toBe(-6);
  expect((test?.p ?? Number.NaN) / 2).toBeCloseTo(0.117, 3);
});
