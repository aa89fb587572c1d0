import { describe, expect, it, test } from "vitest";
import type { Corner } from "#domain";
import { type DraftLine, draftPlan } from "#stats";
import { planEvidence, sayGoodWhen, writtenLine } from "#words";
import { rules } from "../../../src/stats/plan/planRules.ts";
import { aCorner, steadyFacts } from "../../support/planFacts.ts";
import { expectWellFormed } from "./wellFormed.ts";

const corners: readonly Corner[] = [5, 6, 7].map((number) => ({ number, sector: 2 }));
const account = { pace: 400, repeatability: 300, mistakes: 100, others: 0, balance: 800, laps: 120 };
const sector = { sector: 2, ms: 200, usual: 31_000 };
const drafted = (rule: DraftLine["rule"], facts: Partial<typeof steadyFacts>) => {
  const found = rules.find((one) => one.rule === rule)?.lines({ ...steadyFacts, ...facts })[0];
  if (found === undefined) throw new Error(rule);
  return writtenLine(found, corners);
};

test("a line is kept with what it was drafted from, and told in words", () => {
  expect(drafted("pace", { account, sector })).toEqual({
    ...{ rule: "pace", kind: "pace", laps: 8, effort: "full", sector: 2 },
    check: { figure: "sector", value: 31_000 },
    purpose: "Faster in sector 2 (corners 5 to 7)",
    attendTo: "one lap of the replay from outside first, then that line",
    goodWhen: "sector 2 usually 31.000 s or under",
    reason:
      "Over your last six evenings pace costs 0.40 s of your 0.80 s a lap: your best laps are so far from what you measure by.",
  });
});

describe("what to do at a corner comes from what was counted there", () => {
  const taskAt = (fields: Parameters<typeof aCorner>[1]) =>
    drafted("drill", { corners: [aCorner(5, fields)] }).attendTo;
  it.each([
    [{ braking: { what: "late", count: 2, of: 3 } }, "brake earlier for corner 5"],
    [{ braking: { what: "early", count: 2, of: 3 } }, "brake later for corner 5"],
    [{ throttle: { what: "twice", count: 2, of: 3 } }, "one press of the throttle out of corner 5, no lift"],
    [{ throttle: { what: "early", count: 2, of: 3 } }, "a moment’s wait with the throttle at corner 5"],
    [{ throttle: { what: "late", count: 2, of: 3 } }, "the throttle a moment sooner at corner 5"],
    [{ gap: { at: "entry", metres: 1 } }, "begin corner 5 from the outer edge"],
    [{ gap: { at: "apex", metres: 1 } }, "touch the inner edge of corner 5"],
    [{ gap: { at: "exit", metres: 1 } }, "let the car run out to the edge of corner 5"],
  ] as const)("%o", (fields, task) => expect(taskAt(fields)).toBe(task));

  const worth = { low: 100, mid: 200, high: 300 };
  const gap = { at: "exit", metres: 1 } as const;
  const late = { what: "late", count: 2, of: 3 } as const;
  it.each([
    [{}, "corner 5, and all else as it is"],
    [{ gap }, "let the car run out to the edge of corner 5"],
    [{ gap, mistakes: 3 }, "room to spare at corner 5"],
    [{ gap, mistakes: 3, braking: late }, "brake earlier for corner 5"],
    [{ gap, braking: late }, "let the car run out to the edge of corner 5"],
    [{ braking: late }, "brake earlier for corner 5"],
  ] as const)("where it is worth most: %o", (fields, task) => {
    expect(drafted("corner", { corners: [aCorner(5, { worth, ...fields })] }).attendTo).toBe(task);
  });
});

test("the one thing of a target is the driver's own", () => {
  const target = { kind: "best", value: 83_000, by: "2026-12-01", days: 5 } as const;
  expect(drafted("target", { target }).purpose).toBe("For the target: best lap 1:23.000");
  expect(drafted("target", { target })).not.toHaveProperty("attendTo");
  const process = "carry speed through 5";
  expect(drafted("target", { target: { ...target, process } }).attendTo).toBe(process);
});

describe("when a run has worked", () => {
  it.each([
    [{ check: { figure: "clean", value: 7 }, laps: 8 }, "7 of 8 laps clean"],
    [{ check: { figure: "clean", value: 5 }, laps: 5 }, "all 5 laps clean"],
    [{ check: { figure: "usual", value: 84_014.5 } }, "usual lap 1:24.01 or under"],
    [{ check: { figure: "best", value: 83_300 } }, "best lap 1:23.300 or under"],
    [{ check: { figure: "scatter", value: 183 } }, "laps differ by 0.18 s or less"],
    [{ check: { figure: "corner", value: 0 }, corner: 5 }, "no mistake at corner 5"],
    [{ check: { figure: "corner", value: 1 }, corner: 5 }, "at most 1 mistake at corner 5"],
    [{ check: { figure: "drill", value: 800 }, drill: "braking" }, "8 of 10 stops at the mark"],
    [{ check: { figure: "drill", value: 800 } }, "8 of 10 work"],
    [{ check: { figure: "driven" }, laps: 3 }, "3 laps driven"],
  ] as const)("%o", (line, words) => expect(sayGoodWhen(line)).toBe(words));
});

test("every line of a draft is well said, and says what it rests on", () => {
  const facts = [
    { daysSince: 20, account, races: 1, sector },
    { account, corners: [aCorner(5, { worth: { low: 1, mid: 500, high: 900 }, unused: 300 })] },
    { lost: { laps: 60, lost: 20 }, rigTest: { id: "t", laps: 6, runs: 4 } },
    { driven: { sessions: 0, laps: 0, before: 0 } },
  ];
  for (const some of facts)
    for (const line of draftPlan({ ...steadyFacts, ...some }).lines) {
      const { purpose, attendTo = "", goodWhen = "", reason = "" } = writtenLine(line, corners);
      for (const said of [purpose, attendTo, goodWhen, reason]) expectWellFormed(said);
      expect(reason).not.toBe("");
      expect(planEvidence[line.rule].reason).toBeTruthy();
    }
});
