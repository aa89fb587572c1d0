import { expect, test } from "vitest";
import type { PlannedRun, Remark, Run } from "#domain";
import { planOutcome } from "#stats";
import { triedLines } from "../../../../src/stats/plan/planOutcome.ts";
import { aRun, choices } from "../someRows.ts";

const line = (fields: Partial<PlannedRun>): PlannedRun => ({ id: "l", purpose: "", laps: 4, ...fields });
const outcomeOf = (planned: PlannedRun, ...runs: readonly Run[]) => planOutcome([planned], runs, choices)[0];
const off = (corner?: number): readonly Remark[] => [
  { kind: "off", ...(corner !== undefined && { corner }) },
];
const run = (laps: readonly (number | readonly Remark[])[], fields: Partial<Run> = {}) =>
  aRun(
    fields.n ?? 1,
    laps.map((one) => (typeof one === "number" ? one : { ms: 90_000, remarks: one })),
    { line: "l", ...fields },
  );

test("clean laps are counted out of those that were no out or in lap", () => {
  const wanted = line({ check: { figure: "clean", value: 3 } });
  const driven = run([[{ kind: "out" }], 84_000, 84_100, off(), 84_200]);
  expect(outcomeOf(wanted, driven)).toMatchObject({ met: "good", value: 3, of: 4, laps: 5, runs: [1] });
  expect(outcomeOf(wanted, run([84_000, off(), off(), 84_100]))).toMatchObject({
    met: "not yet",
    value: 2,
    of: 4,
  });
  expect(outcomeOf(wanted, run([84_000, 84_100]))).toMatchObject({ met: "too few", value: 2, of: 2 });
});

test("a usual lap, a best and a scatter are good at their value and not yet above", () => {
  const laps = [84_000, 84_200, 84_100, 84_300, 84_400];
  const met = (figure: "usual" | "best" | "scatter", value: number) =>
    outcomeOf(line({ check: { figure, value } }), run(laps))?.met;
  expect([met("usual", 84_200), met("usual", 84_199)]).toEqual(["good", "not yet"]);
  expect([met("best", 84_000), met("best", 83_999)]).toEqual(["good", "not yet"]);
  // An aim is read to the hundredth, and so is the lap beside it.
  const odd = run([84_204, 84_209, 84_209, 84_209, 84_300]);
  expect(outcomeOf(line({ check: { figure: "usual", value: 84_200 } }), odd)?.met).toBe("good");
  // Differences 200, −100, 200, 100: half their mean square is 12 500, its root 111.8: told as 0.11 s.
  expect([met("scatter", 110), met("scatter", 100)]).toEqual(["good", "not yet"]);
  expect(outcomeOf(line({ check: { figure: "scatter", value: 200 } }), run([84_000]))).toMatchObject({
    met: "too few",
  });
});

test("a corner is good once all laps are driven with no more mistakes there than allowed", () => {
  const wanted = line({ corner: 5, check: { figure: "corner", value: 0 } });
  expect(outcomeOf(wanted, run([84_000, 84_100, off(3), 84_200]))).toMatchObject({ met: "good", value: 0 });
  expect(outcomeOf(wanted, run([84_000, off(5)]))).toMatchObject({ met: "not yet", value: 1 });
  expect(outcomeOf(wanted, run([84_000, 84_100]))).toMatchObject({ met: "too few", value: 0 });
});

test("a sector is told by the median of the clean laps that have it", () => {
  const wanted = line({ sector: 2, check: { figure: "sector", value: 31_000 } });
  const laps = (times: readonly number[]) =>
    aRun(
      1,
      times.map((ms) => ({ ms: ms + 53_000, sectors: [27_000, ms, 26_000] })),
      { line: "l" },
    );
  expect(outcomeOf(wanted, laps([30_900, 31_000, 31_400]))).toMatchObject({ met: "good", value: 31_000 });
  expect(outcomeOf(wanted, laps([30_900, 31_100, 31_400]))).toMatchObject({ met: "not yet", value: 31_100 });
  expect(outcomeOf(wanted, run([84_000]))).toMatchObject({ met: "too few" });
});

test("a drill is told by its own counts at its own corner, from five tries on", () => {
  const wanted = line({ drill: "traction", corner: 5, check: { figure: "drill", value: 800 } });
  const counted = (tries: number, good: number, corner = 5) =>
    run([], { counts: [{ drill: "traction", corner, tries, good }] });
  expect(outcomeOf(wanted, counted(10, 8))).toMatchObject({ met: "good", value: 8, of: 10 });
  expect(outcomeOf(wanted, counted(10, 7))).toMatchObject({ met: "not yet", value: 7, of: 10 });
  expect(outcomeOf(wanted, counted(4, 4))).toMatchObject({ met: "too few" });
  expect(outcomeOf(wanted, counted(10, 8, 6))).toMatchObject({ met: "too few", value: 0, of: 0 });
});

test("all runs that name a line drive it together; those of a guest and those that name another do not", () => {
  const wanted = line({ check: { figure: "driven" } });
  const two = [run([84_000, 84_100], { n: 1 }), run([84_000, 84_100], { id: "r2", n: 2 })];
  expect(outcomeOf(wanted, ...two)).toMatchObject({ met: "good", value: 4, of: 4, runs: [1, 2] });
  expect(outcomeOf(wanted, run([84_000], { guest: "Jo" }))).toMatchObject({ met: "to come", laps: 0 });
  expect(outcomeOf(wanted, run([84_000], { line: "other" }))).toMatchObject({ met: "to come" });
});

test("a line of a rig test is driven by runs of that test alone, and a void one leaves its place to be driven", () => {
  const wanted = line({ rigTest: "t", laps: 6, check: { figure: "clean", value: 5 } });
  const laps = [84_000, 84_100, 84_200, 84_300, 84_400];
  const inTest = { id: "t", pair: 1, side: "A" } as const;
  expect(outcomeOf(wanted, run(laps, { rigTest: inTest }))).toMatchObject({ met: "good", value: 5 });
  expect(outcomeOf(wanted, run(laps.slice(1), { rigTest: inTest }))).toMatchObject({ met: "too few" });
  expect(outcomeOf(wanted, run(laps, { rigTest: { ...inTest, void: "rain" } }))?.met).toBe("to come");
  expect(outcomeOf(wanted, run(laps, { rigTest: { ...inTest, id: "another" } }))?.met).toBe("to come");
  expect(outcomeOf(wanted, run(laps))?.met).toBe("to come");
});

test("what was left out, what has no figure and what has no id say so", () => {
  expect(outcomeOf(line({ skipped: true }))?.met).toBe("skipped");
  expect(outcomeOf(line({}), run([84_000]))?.met).toBe("yours");
  const { id: _, ...old } = line({});
  const { line: __, ...unnamed } = run([84_000]);
  expect(outcomeOf(old, unnamed)?.met).toBe("to come");
});

test("the next draft looks at lines a rule drafted that were driven and could be told", () => {
  const plan = [
    line({ id: "a", rule: "corner", corner: 5, laps: 2, check: { figure: "corner", value: 0 } }),
    line({ id: "b", rule: "measure", check: { figure: "usual", value: 83_000 } }),
    line({ id: "c", check: { figure: "driven" } }),
    line({ id: "d", rule: "pace", check: { figure: "usual", value: 83_000 } }),
  ];
  const driven = ["a", "b", "c"].map((id, n) => run([84_000, 84_100], { line: id, id, n }));
  expect(triedLines(planOutcome(plan, driven, choices))).toEqual([
    { rule: "corner", corner: 5, drill: undefined, laps: 2, isGood: true },
    { rule: "measure", corner: undefined, drill: undefined, laps: 4, isGood: false },
  ]);
});
