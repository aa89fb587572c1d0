import { describe, expect, it } from "vitest";
import { pairedTTest, signedRankTest } from "#stats";
import reference from "./wilcoxon-signed-rank.json" with { type: "json" };

interface Limits {
  readonly low: number;
  readonly high: number;
  readonly achievedConfidence?: number;
}
interface Case {
  readonly V: number;
  readonly hodgesLehmann_medianOfWalshAverages: number;
  readonly rDefault: { readonly method: string; readonly pTwoSided: number };
  readonly exactInterval90?: Limits;
  readonly exactInterval95?: Limits;
  readonly rNormalInterval90: Limits;
  readonly rNormalInterval95: Limits;
  readonly pairedT: Readonly<
    Record<"mean" | "t" | "df" | "pTwoSided" | "low90" | "high90" | "low95" | "high95", number>
  >;
}

const cases = reference.expected as unknown as Readonly<Record<string, Case>>;
const data = reference.data as Readonly<Record<string, number[]>>;
const inMs = (name: string) => name !== "depression" && name !== "sleep";

describe.each(Object.keys(cases))("%s", (name) => {
  const wanted = cases[name] as Case;
  const differences = data[name] as number[];

  it.each([90, 95] as const)("signed-rank test as R 4.2.2 wilcox.test, %i %%", (percent) => {
    const test = signedRankTest(differences, percent / 100);
    expect(test?.exact).toBe(wanted.rDefault.method === "exact");
    expect(test?.statistic).toBe(wanted.V);
    expect(test?.p).toBeCloseTo(wanted.rDefault.pTwoSided, 9);
    expect(test?.estimate).toBeCloseTo(wanted.hodgesLehmann_medianOfWalshAverages, 9);
    const exact = wanted[`exactInterval${percent}`];
    const limits = test?.exact === true && exact !== undefined ? exact : wanted[`rNormalInterval${percent}`];
    const tolerance = test?.exact === true ? 1e-9 : inMs(name) ? 0.02 : 0.001;
    expect(Math.abs((test?.low ?? Number.NaN) - limits.low)).toBeLessThan(tolerance);
    expect(Math.abs((test?.high ?? Number.NaN) - limits.high)).toBeLessThan(tolerance);
    if (limits.achievedConfidence === undefined) return;
    expect(test?.achievedConfidence).toBeCloseTo(limits.achievedConfidence, 12);
  });

  it.each([90, 95] as const)("paired t test as R 4.2.2 t.test, %i %%", (percent) => {
    const test = pairedTTest(differences, percent / 100);
    const { mean, t, df, pTwoSided, low90, high90, low95, high95 } = wanted.pairedT;
    const [low, high] = percent === 90 ? [low90, high90] : [low95, high95];
    expect(test?.degreesOfFreedom).toBe(df);
    for (const [actual, value] of [
      [test?.estimate, mean],
      [test?.t, t],
      [test?.p, pTwoSided],
      [test?.low, low],
      [test?.high, high],
    ] as const) {
      expect((actual ?? Number.NaN) / value).toBeCloseTo(1, 9);
    }
  });
});

it("depression data as printed on the R help page of wilcox.test: V = 40, one-sided p = 0.01953", () => {
  const test = signedRankTest(reference.data.depression, 0.95);
  expect(test?.statistic).toBe(40);
  expect((test?.p ?? Number.NaN) / 2).toBeCloseTo(0.01953, 5);
});

it("Student's sleep data: t = −4.0621, 9 degrees of freedom, p = 0.002833 (from memory)", () => {
  const test = pairedTTest(reference.data.sleep, 0.95);
  expect(test?.t).toBeCloseTo(-4.0621, 4);
  expect(test?.degreesOfFreedom).toBe(9);
  expect(test?.p).toBeCloseTo(0.002833, 6);
});

it("the paired t test of Student's sleep data, as R prints it", () => {
  const { published } = reference.expected.sleep;
  const test = pairedTTest(data["sleep"] as number[], 0.95);
  expect(test?.t).toBeCloseTo(published.t, 4);
  expect(test?.degreesOfFreedom).toBe(published.df);
  expect(test?.p).toBeCloseTo(published.pTwoSided, 6);
  expect(test?.estimate).toBeCloseTo(published.meanDifference, 9);
  expect(test?.low).toBeCloseTo(published.low95, 7);
  expect(test?.high).toBeCloseTo(published.high95, 7);
});
