import { describe, expect, it } from "vitest";
import type { RigTest } from "#domain";
import { rigTestReport } from "#stats";
import { choices } from "../someRows.ts";
import { aRigTest, aTestRun } from "./aRigTest.ts";

/** The runs of a test, two an evening, with laps made of the pair and the setting. */
function runsOf(
  test: RigTest,
  lapsOf: (pair: number, side: "A" | "B") => readonly number[],
  pairs = test.pairs.length,
) {
  return test.pairs.slice(0, pairs).flatMap(({ first }, index) => {
    const second = first === "A" ? "B" : "A";
    return [first, second].map((side, n) =>
      aTestRun(index, n + 1, `${index + 1}${side}`, lapsOf(index, side as "A" | "B")),
    );
  });
}
const wobble = [0, 35, -20, 10, -25, 15];
/** Even laps: B faster by 120 ms, a little more or less from pair to pair. */
const usual = (pair: number, side: "A" | "B") =>
  Array.from(
    { length: 6 },
    (_, lap) => 84_000 - (side === "B" ? 120 + (wobble[pair % 6] ?? 0) : 0) + (lap % 2),
  );
/** Alike in the middle, B with laps that differ less. */
const uneven = (pair: number, side: "A" | "B") =>
  Array.from(
    { length: 6 },
    (_, lap) => 84_000 + (lap % 2 ? 1 : -1) * (side === "B" ? 60 : 200 + (wobble[pair % 6] ?? 0)),
  );

describe("while a test lasts", () => {
  it("nothing tells how the settings compare", () => {
    const test = aRigTest("ABBABA");
    const report = rigTestReport(test, runsOf(test, usual, 5), choices);
    expect(report).toMatchObject({ isOver: false, complete: 5, planned: 6 });
    expect(report.verdict).toEqual({ known: false, reason: { needs: 6, of: "pair of runs", has: 5 } });
    expect(Object.keys(report).toSorted()).toEqual([
      "complete",
      "figure",
      "isOver",
      "planned",
      "progress",
      "verdict",
    ]);
    expect(JSON.stringify(report), "no time of any lap").not.toMatch(/8[34]\d\d\d/);
  });
});

describe("a test that is over", () => {
  it("with all its pairs has a verdict", () => {
    const test = aRigTest("ABBABA");
    const report = rigTestReport(test, runsOf(test, usual), choices);
    if (!report.isOver || !report.verdict.known) throw new Error("Six pairs of six are all.");
    expect(report.verdict.value.finding).toBe("B");
    expect(report.verdict.value.estimate).toBeCloseTo(-122.5, 6);
    expect(report.pairs[1]).toEqual({ first: "B", a: 84_000.5, b: 83_845.5, difference: -155 });
    expect(report.check).toMatchObject({ exact: true, p: 2 / 64 });
  });

  it("stopped early has its estimate, and no claim however clear it looks", () => {
    const test = aRigTest("ABBABAAB", { endedAt: 9 });
    const report = rigTestReport(test, runsOf(test, usual, 7), choices);
    expect(report.verdict).toEqual({
      known: false,
      reason: { because: "test stopped early", pairs: 7, planned: 8 },
    });
    expect(report.isOver && report.estimate?.high).toBeLessThan(0);
  });

  it("with a setting kept and pairs missing does not say that it was stopped: runs of it may be elsewhere", () => {
    const test = aRigTest("ABBABAAB", { endedAt: 9, kept: "B" });
    const report = rigTestReport(test, runsOf(test, usual, 7), choices);
    expect(report.verdict).toEqual({
      known: false,
      reason: { because: "pairs not here", pairs: 7, planned: 8 },
    });
  });

  it("judges by the scatter where that was asked", () => {
    const test = aRigTest("ABBABA", { figure: "scatter" });
    const report = rigTestReport(test, runsOf(test, uneven), choices);
    expect(report).toMatchObject({ figure: "scatter", verdict: { known: true, value: { finding: "B" } } });
    // Laps by turns 60 ms over and under: each differs by 120, the root of half its square is 84.85.
    expect(report.isOver && report.pairs[0]?.b).toBeCloseTo(120 / Math.SQRT2, 6);
    const byUsual = rigTestReport({ ...test, figure: "usual" }, runsOf(test, uneven), choices);
    expect(byUsual.isOver && byUsual.pairs.every(({ difference }) => difference === 0)).toBe(true);
    expect(byUsual.verdict).toEqual({ known: false, reason: { because: "pairs that do not differ" } });
  });
});
