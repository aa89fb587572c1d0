import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { known, unknown } from "#domain";
import { draftPlan, type PlanFacts } from "#stats";
import { aCorner, steadyFacts } from "../../../support/planFacts.ts";

const rulesOf = (facts: Partial<PlanFacts>, minutes?: number) => {
  const { lines, first } = draftPlan({ ...steadyFacts, ...facts }, minutes);
  return { rules: lines.map(({ rule }) => rule), first: lines[first]?.rule };
};
const account = { pace: 200, repeatability: 300, mistakes: 100, others: 0, balance: 600, laps: 120 };
const worth = { low: 100, mid: 400, high: 800 };

describe("what comes first", () => {
  it("is what costs most, and next what costs most after it", () => {
    expect(rulesOf({ account })).toEqual({
      rules: ["warm-up", "repeatability", "pace", "measure"],
      first: "repeatability",
    });
    expect(rulesOf({ account, corners: [aCorner(5, { worth })] })).toEqual({
      rules: ["warm-up", "corner", "repeatability", "measure"],
      first: "corner",
    });
  });

  it("is mistakes where one lap in six is lost, whatever costs more seconds", () => {
    expect(rulesOf({ account, lost: { laps: 60, lost: 10 } }).first).toBe("mistakes");
    expect(rulesOf({ account, lost: { laps: 60, lost: 9 } }).first).toBe("repeatability");
  });

  it("is the next run of a rig test before all else", () => {
    expect(rulesOf({ account, rigTest: { id: "t", laps: 6, runs: 4 } })).toEqual({
      rules: ["warm-up", "rig test", "repeatability", "pace", "measure"],
      first: "rig test",
    });
  });

  it("where nothing costs anything, is the run that shows it", () => {
    expect(rulesOf({})).toEqual({ rules: ["warm-up", "measure"], first: "measure" });
  });
});

test("a break opens easy, a target near its date closes, and where races are driven a long run comes last", () => {
  const target = { kind: "best", value: 83_000, by: "2026-12-01", days: 10 } as const;
  expect(rulesOf({ daysSince: 12, target, races: 2 }).rules).toEqual(["after a break", "target", "race"]);
});

test("a new circuit has a draft of its own", () => {
  const { lines } = draftPlan({
    ...steadyFacts,
    ...{ driven: { sessions: 0, laps: 0, before: 0 }, evening: undefined, account: undefined },
    ...{ usual: undefined, scatter: undefined, daysSince: undefined },
  });
  expect(lines.map(({ rule, effort }) => [rule, effort])).toEqual([
    ["learn the layout", "easy"],
    ["learn the layout", "learning"],
    ["learn the layout", "brisk"],
  ]);
});

test("what did not work twice is not proposed a third time in the same form, nor when no form is left", () => {
  const failed = { rule: "repeatability", corner: undefined, drill: undefined, isGood: false };
  const lapsAfter = (tried: PlanFacts["tried"]) =>
    draftPlan({ ...steadyFacts, account, tried }).lines.find(({ rule }) => rule === "repeatability")?.laps;
  const [eight, five] = [
    { ...failed, laps: 8 },
    { ...failed, laps: 5 },
  ];
  expect(lapsAfter([])).toBe(8);
  expect(lapsAfter([eight])).toBe(8);
  expect(lapsAfter([eight, eight])).toBe(5);
  expect(lapsAfter([{ ...eight, isGood: true }, eight, eight])).toBe(8);
  expect(lapsAfter([five, five, eight, eight])).toBeUndefined();
});

test("a run shortened by a short evening is the form it was shortened from, and not a new one", () => {
  const failed = { rule: "repeatability", corner: undefined, drill: undefined, isGood: false };
  const linesAt = (tried: PlanFacts["tried"], minutes: number) =>
    draftPlan({ ...steadyFacts, account: { ...account, pace: 0, mistakes: 0 }, tried }, minutes)
      .lines.filter(({ rule }) => rule === "repeatability")
      .map(({ laps }) => laps);
  const [seven, six, five] = [7, 6, 5].map((laps) => ({ ...failed, laps }));
  if (seven === undefined || six === undefined || five === undefined) throw new Error("three of them");
  expect(linesAt([seven], 90)).toEqual([8]);
  expect(linesAt([seven, six], 90)).toEqual([5]);
  // Where there is room for five laps only, the long run would be the short one that failed.
  expect(linesAt([], 21)).toEqual([5]);
  expect(linesAt([five, five], 21)).toEqual([]);
  expect(linesAt([five, five], 90)).toEqual([8]);
});

test("a rig test goes on and an effect is measured, however often it has not worked", () => {
  const rigTest = { id: "t", laps: 6, runs: 4 };
  const tried = ["rig test", "measure", "warm-up"].flatMap((rule) =>
    [8, 8, 6, 6, 3, 3].map((laps) => ({ rule, corner: undefined, drill: undefined, laps, isGood: false })),
  );
  expect(rulesOf({ rigTest, tried }).rules).toEqual(["warm-up", "rig test", "measure"]);
});

test("with no time for three runs what costs most stays, and with no time at all one lap of it", () => {
  expect(rulesOf({ account }, 21).rules).toEqual(["warm-up", "repeatability", "measure"]);
  expect(rulesOf({ account }, 12).rules).toEqual(["warm-up", "repeatability"]);
  const { lines } = draftPlan({ ...steadyFacts, account }, 1);
  expect(lines.map(({ rule, laps }) => [rule, laps])).toEqual([["repeatability", 1]]);
});

test("a sparse evening is three short runs where its laps by half allow them, and its minutes by half", () => {
  const runs = (laps: number, minutes: number, typed?: number) =>
    draftPlan({ ...steadyFacts, account, evening: { laps, minutes, lapMs: 84_000 } }, typed).lines.map(
      (line) => line.laps,
    );
  // Twelve laps of 1:24 and two rests of two minutes are 20.8 minutes.
  expect(runs(8, 15)).toEqual([2, 5, 5]);
  expect(runs(8, 13)).toHaveLength(2);
  expect(runs(7, 15)).toHaveLength(2);
  expect(runs(8, 15, 15)).toHaveLength(2);
});

test("it is told where laps and not minutes keep a draft short", () => {
  const at = (laps: number, minutes: number) =>
    draftPlan({ ...steadyFacts, account, evening: { laps, minutes: 40, lapMs: 84_000 } }, minutes)
      .isShortOfLaps;
  expect(at(8, 120)).toBe(true);
  expect(at(8, 15)).toBe(false);
  expect(at(40, 120)).toBe(false);
});

const ms = (most: number) => fc.integer({ min: 0, max: most });
const span = ms(900).map((mid) => ({ low: Math.floor(mid / 2), mid, high: mid * 2 }));
const habit = <W extends string>(...words: readonly W[]) =>
  fc.option(fc.record({ what: fc.constantFrom(...words), count: fc.constant(2), of: fc.constant(3) }), {
    nil: undefined,
  });
const corner = fc.record({
  ...{ number: fc.integer({ min: 1, max: 12 }), laps: fc.constant(120), mistakes: ms(12) },
  worth: fc.option(span, { nil: undefined }),
  unused: fc.option(ms(400), { nil: undefined }),
  mistakesMs: fc.option(ms(400), { nil: undefined }),
  braking: habit("early", "late"),
  throttle: habit("early", "late", "twice"),
  gap: fc.option(
    fc.record({
      at: fc.constantFrom("entry", "apex", "exit"),
      metres: fc.double({ min: 0.1, max: 3, noNaN: true }),
    }),
    { nil: undefined },
  ),
});
/** All numbers in a value, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

const facts: fc.Arbitrary<PlanFacts> = fc.record({
  driven: fc.record({ sessions: ms(40), laps: ms(900), before: ms(3) }),
  evening: fc.option(
    fc.record({
      laps: fc.integer({ min: 1, max: 80 }),
      minutes: fc.integer({ min: 5, max: 180 }),
      lapMs: fc.integer({ min: 20_000, max: 600_000 }),
    }),
    { nil: undefined },
  ),
  daysSince: fc.option(ms(60), { nil: undefined }),
  lastBreak: fc.constant(undefined),
  account: fc.option(
    fc
      .record({ pace: ms(900), repeatability: ms(900), mistakes: ms(900), others: ms(200), laps: ms(120) })
      .map((lines) => ({
        ...lines,
        balance: lines.pace + lines.repeatability + lines.mistakes + lines.others,
      })),
    { nil: undefined },
  ),
  evenings: fc.constant(6),
  lost: fc.record({ laps: fc.constant(120), lost: ms(40) }),
  corners: fc.uniqueArray(corner, { selector: ({ number }) => number, maxLength: 5 }),
  sector: fc.option(fc.record({ sector: fc.integer({ min: 1, max: 4 }), ms: ms(400), usual: ms(40_000) }), {
    nil: undefined,
  }),
  rigTest: fc.option(
    fc.record({
      id: fc.constant("t"),
      laps: fc.integer({ min: 5, max: 12 }),
      runs: fc.integer({ min: 1, max: 16 }),
    }),
    { nil: undefined },
  ),
  overnight: ms(600).map((low) => known({ estimate: low, low: low - 300, high: low + 300, pairs: 8 })),
  spread: fc.oneof(
    fc.constant(unknown({ needs: 6, of: "session", has: 0 })),
    fc
      .record({ evenings: ms(999), runs: ms(999), laps: fc.integer({ min: 1, max: 999 }) })
      .map((parts) => known({ ...parts, sessions: 6 })),
  ),
  target: fc.option(
    fc.record({
      kind: fc.constantFrom("best", "median", "meanOf", "scatter", "cleanShare"),
      ...{ value: fc.constant(83_000), by: fc.constant("2026-12-01"), days: ms(60) },
    }),
    { nil: undefined },
  ),
  usual: fc.option(fc.constant(84_000), { nil: undefined }),
  scatter: fc.option(fc.constant(300), { nil: undefined }),
  races: ms(3),
  tried: fc.array(
    fc.record({
      rule: fc.constantFrom("corner", "pace", "mistakes", "repeatability", "drill"),
      corner: fc.option(fc.integer({ min: 1, max: 12 }), { nil: undefined }),
      drill: fc.constant(undefined),
      laps: fc.constantFrom(5, 8),
      isGood: fc.boolean(),
    }),
    { maxLength: 6 },
  ),
});

test("every draft names only corners and sectors there are, fits the time, and asks for no more than the usual laps by half", () => {
  fc.assert(
    fc.property(facts, fc.option(fc.integer({ min: 1, max: 240 }), { nil: undefined }), (of, minutes) => {
      const draft = draftPlan(of, minutes);
      const { lines, first, room } = draft;
      const numbers = numbersIn(of);
      const known = new Set([
        ...of.corners.map(({ number }) => number),
        ...of.tried.map((line) => line.corner),
      ]);
      for (const line of lines) {
        if (line.corner !== undefined) expect(known.has(line.corner)).toBe(true);
        if (line.sector !== undefined) expect(line.sector).toBe(of.sector?.sector);
        expect(line.laps).toBeGreaterThan(0);
        const { figure, value = 0 } = line.check;
        if (figure === "clean") expect(value).toBeLessThanOrEqual(line.laps);
        else if (figure === "drill") expect(value).toBe(800);
        else if (figure !== "driven") expect([0, ...numbers]).toContain(value);
        const { because } = line;
        const told = because.because === "runs differ" ? [because.ms, because.balance] : numbersIn(because);
        for (const number of told) expect([0, ...numbers]).toContain(number);
      }
      expect(lines.length).toBeLessThanOrEqual(5);
      expect(lines[first]).toBeDefined();
      const laps = lines.reduce((sum, line) => sum + line.laps, 0);
      expect(laps).toBeLessThanOrEqual(Math.max(1, Math.floor((of.evening?.laps ?? 20) * 1.5)));
      const driving = (laps * (of.evening?.lapMs ?? 90_000)) / 60_000 + 2 * (lines.length - 1);
      expect(driving <= room.minutes || laps === 1).toBe(true);
      expect(room.minutes).toBeLessThanOrEqual(minutes ?? (of.evening?.minutes ?? 60) * 1.5);
      expect(draftPlan(of, minutes)).toEqual(draft);
    }),
  );
});

test("a drill not met twice is not carried a third time", () => {
  const kerb = { rule: "drill", corner: 8, drill: "kerb", laps: 5, isGood: false } as const;
  expect(rulesOf({ account, tried: [kerb] }).rules).toContain("drill");
  expect(rulesOf({ account, tried: [kerb, kerb] }).rules).not.toContain("drill");
});
