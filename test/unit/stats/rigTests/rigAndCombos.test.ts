import { describe, expect, it } from "vitest";
import type { RigTest, Run } from "#domain";
import { figureForTarget, pairOrder, rigTestReport, sessionDigest, spreadOfRunDifferences } from "#stats";
import { normalAt } from "../../../../src/stats/random/draws.ts";
import { aRun, aSession, choices } from "../someRows.ts";

/** A test of so many pairs in which B is faster by a known amount and what is driven second by 200 ms. */
function rigTest(pairs: number, gain: number, fields: Partial<RigTest> = {}): { test: RigTest; runs: Run[] } {
  const order = pairOrder(pairs, 3);
  const runs = order.flatMap((first, pair) =>
    (["A", "B"] as const).map((setting) => {
      const level = 84_000 - (setting === "B" ? gain : 0) - (setting === first ? 0 : 200);
      const laps = Array.from({ length: 5 }, (_, lap) =>
        Math.round(level + 40 * normalAt(29, pair, setting === "A" ? 0 : 1, lap)),
      );
      return aRun(2 * pair + (setting === first ? 1 : 2), laps, { id: `${setting}${pair}`, endedAt: 9 });
    }),
  );
  const test: RigTest = {
    id: "test",
    createdAt: 0,
    updatedAt: 0,
    comboId: "combo",
    question: "less damping",
    rigA: "a",
    rigB: "b",
    pairsPlanned: pairs,
    level: 0.1,
    seed: 3,
    pairs: order.map((first, pair) => ({ first, runA: `A${pair}`, runB: `B${pair}` })),
    ...fields,
  };
  return { test, runs };
}

describe("rig test report", () => {
  it("finds the setting that is faster, with the order taken out", () => {
    const { test, runs } = rigTest(8, 150);
    const report = rigTestReport(test, runs, choices);
    expect(report.verdict).toMatchObject({ known: true, value: { finding: "B" } });
    if (!report.verdict.known || !report.isOver) return;
    expect(report.verdict.value.low).toBeLessThan(-150);
    expect(report.verdict.value.high).toBeGreaterThan(-150);
    // A first: the gain of being second goes to B, so the difference falls by 200.
    expect(report.verdict.value.orderEffect).toBeCloseTo(-200, -2);
    expect(report.check?.estimate).toBeLessThan(0);
    expect(report.isQuestioned).toBe(false);
  });

  it("stopped early gives an estimate and no claim; under six pairs never a verdict", () => {
    const { test, runs } = rigTest(9, 150);
    const short = { ...test, pairs: test.pairs.slice(0, 7) };
    expect(rigTestReport(short, runs, choices).verdict).toEqual({
      known: false,
      reason: { needs: 9, of: "pair of runs", has: 7 },
    });
    const stopped = rigTestReport({ ...short, endedAt: 9 }, runs, choices);
    expect(stopped.verdict).toEqual({
      known: false,
      reason: { because: "test stopped early", pairs: 7, planned: 9 },
    });
    expect(stopped.isOver && stopped.estimate?.estimate).toBeLessThan(0);
    const four = rigTest(4, 150);
    expect(rigTestReport(four.test, four.runs, choices).verdict).toEqual({
      known: false,
      reason: { needs: 6, of: "pair of runs", has: 4 },
    });
  });

  it("a pair with a run that is missing or a guest's is not complete", () => {
    const { test, runs } = rigTest(6, 150);
    const fewer = runs
      .filter((run) => run.id !== "A2")
      .map((run) => (run.id === "B4" ? { ...run, guest: "Ida" } : run));
    expect(rigTestReport(test, fewer, choices)).toMatchObject({ complete: 4, planned: 6 });
  });

  it.each([
    [3000, true],
    [2000, false],
  ])("asks when the shift is more than 3 %% of the lap", (gain, isQuestioned) => {
    const { test, runs } = rigTest(6, gain);
    expect(rigTestReport(test, runs, choices)).toMatchObject({ isOver: true, isQuestioned });
  });
});

describe("spread of the difference of neighbouring runs", () => {
  it("by hand, within sessions only", () => {
    const flat = (ms: number) => [ms, ms, ms, ms, ms];
    const digest = (day: number, levels: number[]) =>
      sessionDigest(
        aSession(day),
        levels.map((ms, n) => aRun(n + 1, flat(ms))),
        choices,
      );
    const found = spreadOfRunDifferences([
      digest(0, [84_000, 84_100, 84_000, 84_100]),
      digest(1, [90_000, 89_900, 90_000]),
    ]);
    // Differences 100, −100, 100, −100, 100: deviation √(12000) about 20.
    expect(found).toMatchObject({
      known: true,
      value: { differences: 5, ms: expect.closeTo(Math.sqrt(12_000), 6) },
    });
    expect(spreadOfRunDifferences([digest(0, [84_000, 84_100])])).toEqual({
      known: false,
      reason: { needs: 5, of: "pair of neighbouring runs", has: 1 },
    });
  });
});

describe("the figure against a target", () => {
  const digests = [
    sessionDigest(aSession(0), [aRun(1, [84_000, 84_100, 84_200, 84_300, 84_400, [90_000, "off"]])], choices),
    sessionDigest(aSession(1), [aRun(1, [85_000, [70_000, "cut"], 85_300], { sessionId: "b" })], choices),
  ];

  it.each([
    ["best", undefined, 84_000],
    ["median", undefined, 84_200],
    ["meanOf", 3, 84_100],
    ["meanOf", 9, undefined],
    ["scatter", undefined, Math.sqrt(5000)],
    ["cleanShare", undefined, (1000 * 5) / 6],
  ] as const)("%s of %s", (kind, laps, wanted) => {
    const found = figureForTarget({ kind, ...(laps !== undefined && { laps }) }, digests, () => undefined);
    if (wanted === undefined) expect(found).toBeUndefined();
    else expect(found?.value).toBeCloseTo(wanted, 9);
  });

  it("is unknown without sessions", () => {
    expect(figureForTarget({ kind: "best" }, [], () => undefined)).toBeUndefined();
    expect(figureForTarget({ kind: "median" }, [], () => undefined)).toBeUndefined();
  });
});
