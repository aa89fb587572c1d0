import { describe, expect, it, test } from "vitest";
import { known } from "#domain";
import type { PlanFacts } from "#stats";
import { writtenLine } from "#words";
import { isLosingLaps, isNewCircuit, type PlanRule, rules } from "../../../../src/stats/plan/planRules.ts";
import { aCorner, steadyFacts } from "../../../support/planFacts.ts";

const linesOf = (rule: PlanRule, facts: Partial<PlanFacts>) => {
  const found = rules.find((one) => one.rule === rule);
  if (found === undefined) throw new Error(rule);
  return found.lines({ ...steadyFacts, ...facts });
};
const account = { pace: 200, repeatability: 300, mistakes: 100, others: 0, balance: 600, laps: 120 };
const overnight = (low: number, high: number) => known({ estimate: (low + high) / 2, low, high, pairs: 8 });
const spread = (runs: number, laps: number) => known({ evenings: 0, runs, laps, sessions: 6 });
const target = { kind: "best", value: 83_000, by: "2026-12-01", days: 21 } as const;
const worth = (mid: number) => ({ low: mid / 2, mid, high: mid * 2 });
const good = { rule: "corner", corner: 5, drill: undefined, laps: 8, isGood: true };

/** Of each rule figures at which it speaks, and figures at which it just does not. */
const cases: readonly (readonly [PlanRule, fires: Partial<PlanFacts>, just: Partial<PlanFacts>])[] = [
  ["after a break", { daysSince: 10 }, { daysSince: 9 }],
  ["rig test", { rigTest: { id: "t", laps: 6, runs: 4 } }, { rigTest: undefined }],
  ["again", { tried: [good] }, { tried: [{ ...good, isGood: false }] }],
  ["again", { tried: [good] }, { tried: [{ ...good, rule: "measure" }] }],
  ["again", { tried: [{ ...good, rule: "warm-up" }, good] }, { tried: [{ ...good, rule: "again" }, good] }],
  ["mistakes", { account: { ...account, mistakes: 1 } }, { account: { ...account, mistakes: 0 } }],
  ["mistakes", { lost: { laps: 60, lost: 10 } }, { lost: { laps: 61, lost: 10 } }],
  [
    "corner",
    { corners: [aCorner(5, { worth: worth(30) })] },
    { corners: [aCorner(5, { worth: worth(29) })] },
  ],
  ["runs alike", { account, spread: spread(101, 100) }, { account, spread: spread(100, 100) }],
  [
    "repeatability",
    { account: { ...account, repeatability: 1 } },
    { account: { ...account, repeatability: 0 } },
  ],
  ["repeatability", { account }, { account, scatter: undefined }],
  ["pace", { account: { ...account, pace: 1 } }, { account: { ...account, pace: 0 } }],
  [
    "drill",
    { corners: [aCorner(5, { braking: { what: "late", count: 2, of: 3 } })] },
    { corners: [aCorner(5)] },
  ],
  ["target", { target }, { target: { ...target, days: 22 } }],
  ["target", { target }, { target: { ...target, kind: "scatter" } }],
  ["race", { races: 1 }, { races: 0 }],
];

describe("each rule speaks at its figures, and just before them does not", () => {
  it.each(cases)("%s", (rule, fires, just) => {
    expect(linesOf(rule, fires)).not.toEqual([]);
    expect(linesOf(rule, just)).toEqual([]);
  });
});

test("every rule of the table has such figures, but for two that always speak", () => {
  const tried = new Set(cases.map(([rule]) => rule));
  expect(rules.map(({ rule }) => rule).filter((rule) => !tried.has(rule))).toEqual(["warm-up", "measure"]);
});

describe("braking later is never told where the car leaves the road", () => {
  const early = { what: "early", count: 3, of: 3 } as const;
  const told = (mistakes: number, braking: PlanFacts["corners"][number]["braking"]) =>
    rules
      .flatMap(({ lines }) =>
        lines({ ...steadyFacts, account, corners: [aCorner(5, { mistakes, worth: worth(400), braking })] }),
      )
      .map((line) => writtenLine(line).attendTo);

  it("with one mistake there it is not, by no rule", () => {
    expect(told(0, early)).toContain("brake later for corner 5");
    expect(told(1, early).join()).not.toMatch(/brake later/);
  });

  it("braking earlier may be told there, and neither is without counted reviews", () => {
    expect(told(1, { what: "late", count: 2, of: 3 })).toContain("brake earlier for corner 5");
    for (const mistakes of [0, 5])
      expect(told(mistakes, undefined).join()).not.toMatch(/brake (later|earlier)/);
  });
});

test("a warm-up is longer where evenings begin clearly slower than the one before ended", () => {
  expect(linesOf("warm-up", { overnight: overnight(1, 300) })).toMatchObject([
    { laps: 5, because: { because: "slower overnight", pairs: 8 } },
  ]);
  expect(linesOf("warm-up", { overnight: overnight(0, 300) })).toMatchObject([
    { laps: 3, because: { because: "first laps" } },
  ]);
});

test("one lap in six lost, with or without a time, is losing laps", () => {
  expect(isLosingLaps({ ...steadyFacts, lost: { laps: 60, lost: 10 } })).toBe(true);
  expect(isLosingLaps({ ...steadyFacts, lost: { laps: 60, lost: 9 } })).toBe(false);
  expect(isLosingLaps({ ...steadyFacts, lost: { laps: 0, lost: 0 } })).toBe(false);
});

test("a circuit is new until two sessions or twenty laps, and never after a page was turned", () => {
  const of = (sessions: number, laps: number, before = 0) =>
    isNewCircuit({ ...steadyFacts, driven: { sessions, laps, before } });
  expect([of(0, 0), of(1, 19), of(1, 20), of(2, 19), of(0, 0, 1)]).toEqual([true, true, false, false, false]);
});

test("mistakes name the corner from three of them on, the one with most", () => {
  const corners = [aCorner(3, { mistakes: 3 }), aCorner(5, { mistakes: 4 }), aCorner(8, { mistakes: 2 })];
  const lost = { laps: 60, lost: 10 };
  expect(linesOf("mistakes", { lost, corners })[0]).toMatchObject({
    corner: 5,
    because: { lost: 10, laps: 60, corner: { number: 5, count: 4 } },
  });
  expect(linesOf("mistakes", { lost, corners: [aCorner(8, { mistakes: 2 })] })[0]).not.toHaveProperty(
    "corner",
  );
});

test("pace names the corner that holds a quarter of it, and the sector it is judged by", () => {
  const pace = { ...account, pace: 400 };
  const sector = { sector: 2, ms: 200, usual: 31_000 };
  expect(linesOf("pace", { account: pace, sector, corners: [aCorner(5, { unused: 100 })] })[0]).toMatchObject(
    {
      ...{ corner: 5, sector: 2 },
      check: { figure: "sector", value: 31_000 },
    },
  );
  const [without] = linesOf("pace", { account: pace, corners: [aCorner(5, { unused: 99 })] });
  expect(without).not.toHaveProperty("corner");
  expect(without?.check).toEqual({ figure: "usual", value: 84_000 });
});

test("a drill follows what was counted at the corner: throttle before braking, braking before a gap", () => {
  const gap = { at: "exit", metres: 0.9 } as const;
  const braking = { what: "late", count: 2, of: 2 } as const;
  const throttle = { what: "twice", count: 2, of: 2 } as const;
  const drillOf = (fields: Parameters<typeof aCorner>[1]) =>
    linesOf("drill", { corners: [aCorner(5, fields)] })[0]?.drill;
  expect([drillOf({ gap, braking, throttle }), drillOf({ gap, braking }), drillOf({ gap })]).toEqual([
    "traction",
    "braking",
    "kerb",
  ]);
});

test("pace names the corner that is worth most, or none: another one would be a second answer", () => {
  const pace = { ...account, pace: 400 };
  const corners = [aCorner(5, { worth: worth(240), mistakes: 9 }), aCorner(8, { unused: 200 })];
  expect(linesOf("pace", { account: pace, corners })[0]).not.toHaveProperty("corner");
  expect(linesOf("pace", { account: pace, corners: corners.toReversed() })[0]).toMatchObject({ corner: 8 });
});

test("of one evening no more than a thousandth of the best lap is asked: else as near to it as can be", () => {
  const asked = (best: number | undefined) => linesOf("target", { target, best })[0];
  expect(asked(undefined)?.check.value).toBe(83_000);
  // A thousandth of 83.083 s is 0.083083 s.
  expect(asked(83_083)).toMatchObject({
    check: { figure: "best", value: 83_000 },
    because: { best: undefined },
  });
  expect(asked(83_084)).toMatchObject({
    check: { figure: "best", value: 83_084 },
    because: { best: 83_084 },
  });
});

test("a drill that was not met goes on before another is begun, and is done once it came off", () => {
  const corners = [aCorner(5, { braking: { what: "late", count: 2, of: 3 } })];
  const kerb = { rule: "drill", corner: 8, drill: "kerb", laps: 5, came: { good: 7, tries: 10 } } as const;
  expect(linesOf("drill", { corners, tried: [{ ...kerb, isGood: false }] })).toMatchObject([
    { corner: 8, drill: "kerb", because: { because: "not met", came: { good: 7, tries: 10 } } },
    { corner: 5, drill: "braking" },
  ]);
  expect(linesOf("drill", { corners, tried: [{ ...kerb, isGood: true }] })).toMatchObject([{ corner: 5 }]);
});
