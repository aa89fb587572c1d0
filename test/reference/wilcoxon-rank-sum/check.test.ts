import { describe, expect, it } from "vitest";
import { rankSumTest } from "#stats";
import reference from "./wilcoxon-rank-sum.json" with { type: "json" };

interface Limits {
  readonly low: number;
  readonly high: number;
  readonly achievedConfidence?: number;
}
interface Case {
  readonly hasTies: boolean;
  readonly W: number;
  readonly hodgesLehmann_medianOfDifferencesXminusY: number;
  readonly rDefault: { readonly pTwoSided: number };
  readonly exactInterval90?: Limits;
  readonly exactInterval95?: Limits;
  readonly rNormalInterval90: Limits;
  readonly rNormalInterval95: Limits;
}

const cases = reference.expected as unknown as Readonly<Record<string, Case>>;
const data = reference.data as Readonly<Record<string, { readonly x: number[]; readonly y: number[] }>>;

describe.each(Object.keys(cases))("%s", (name) => {
  const wanted = cases[name] as Case;
  const { x, y } = data[name] as { x: number[]; y: number[] };

  it.each([90, 95] as const)("rank-sum test as R 4.2.2 wilcox.test, %i %%", (percent) => {
    const test = rankSumTest(x, y, percent / 100);
    expect(test?.exact).toBe(!wanted.hasTies);
    expect(test?.statistic).toBe(wanted.W);
    expect(test?.p).toBeCloseTo(wanted.rDefault.pTwoSided, 9);
    expect(test?.estimate).toBeCloseTo(wanted.hodgesLehmann_medianOfDifferencesXminusY, 9);
    const exact = wanted[`exactInterval${percent}`];
    const limits = exact ?? wanted[`rNormalInterval${percent}`];
    const tolerance = exact === undefined ? 0.02 : 1e-9;
    expect(Math.abs((test?.low ?? Number.NaN) - limits.low)).toBeLessThan(tolerance);
    expect(Math.abs((test?.high ?? Number.NaN) - limits.high)).toBeLessThan(tolerance);
    if (limits.achievedConfidence === undefined) return;
    expect(test?.achievedConfidence).toBeCloseTo(limits.achievedConfidence, 12);
  });
});

it("permeability as printed on the R help page of wilcox.test: W = 35, one-sided p = 0.1272", () => {
  const { x, y } = reference.data.permeability;
  const test = rankSumTest(x, y, 0.95);
  expect(test?.statistic).toBe(35);
  expect((test?.p ?? Number.NaN) / 2).toBeCloseTo(0.1272, 4);
});
