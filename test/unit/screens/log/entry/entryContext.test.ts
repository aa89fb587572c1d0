import { describe, expect, it, test } from "vitest";
import { defaultPreferences, preferencesId, type RunsToJudgeBy } from "#db";
import type { Lap, Run } from "#domain";
import { parseEntry, parsePaste, questionOf } from "#entry";
import { entryContext } from "../../../../../src/screens/log/entry/entryContext.ts";

const stamps = { createdAt: 1, updatedAt: 1 };
const lap = (ms: number, n: number, fields: Partial<Lap> = {}): Lap => ({
  id: `l${n}`,
  n,
  ms,
  decimals: 3,
  source: "typed",
  remarks: [],
  ...stamps,
  ...fields,
});
const aRun = (id: string, times: readonly number[], fields: Partial<Run> = {}): Run => ({
  id,
  sessionId: "s",
  comboId: "k",
  n: 1,
  startedAt: 1,
  kind: "pace",
  effort: "full",
  surface: "dry",
  note: "",
  laps: times.map((ms, index) => lap(ms, index + 1)),
  ...stamps,
  ...fields,
});
const dryPb = { ms: 91_312, decimals: 3 };
const contextOf = (
  run: Run,
  before: readonly Run[] = [],
  page: readonly Run[] = [],
  hasEarlierBest = true,
) => {
  const around: RunsToJudgeBy = { page, layout: [], elsewhere: [] };
  return entryContext({
    run,
    runs: [...before, run],
    around,
    layout: { id: "l", trackId: "t", name: "", corners: [], ...stamps },
    preferences: { id: preferencesId, ...defaultPreferences, ...stamps },
    pb: dryPb,
    hasEarlierBest,
    targetMs: undefined,
  });
};
const read = (text: string, context: ReturnType<typeof contextOf>) => {
  const reading = parseEntry(text, context);
  return reading.ok ? reading.lap.ms : reading.problem.wrong;
};
const slow = [101_300, 101_900, 101_500];
const dryEarlier = aRun("r0", [91_400, 91_500, 91_600, 91_700]);
const kinds: readonly Partial<Run>[] = [
  { surface: "wet" },
  { surface: "damp", kind: "drill" },
  { kind: "drill" },
  { kind: "warm-up" },
  { effort: "learning" },
  { guest: "" },
];

describe.each(kinds)("1205 after 1:41.3, 1:41.9 and 1:41.5 in a run of %o", (kind) => {
  const run = aRun("r1", slow, kind);
  it("is 1:41.205, whatever the dry laps before it and the dry PB", () => {
    for (const before of [[], [dryEarlier]]) {
      const reading = parseEntry("1205", contextOf(run, before, [dryEarlier]));
      expect(reading).toMatchObject({ ok: true, lap: { ms: 101_205 }, form: "short" });
      expect(reading.ok && questionOf(reading)).toBeUndefined();
    }
  });

  it("is the same in a pasted column", () => {
    const first = aRun("r1", [], kind);
    const { lines } = parsePaste("1:41.3\n1:41.9\n1:41.5\n1205", contextOf(first, [], [dryEarlier]));
    expect(lines.map(({ reading }) => reading.ok && reading.lap.ms)).toEqual([...slow, 101_205]);
  });
});

test("the first lap of a wet run is not completed from dry ones; from wet ones of the page it is", () => {
  const wet = aRun("r1", [], { surface: "wet" });
  expect(read("1205", contextOf(wet, [dryEarlier]))).toMatch(/no lap yet/);
  expect(read("1205", contextOf(wet, [dryEarlier], [aRun("p", slow, { surface: "wet" })]))).toBe(101_205);
});

test("the first lap of a drill needs its tens of seconds where only laps at pace are known", () => {
  const drill = aRun("r1", [], { kind: "drill" });
  expect(read("1205", contextOf(drill, [dryEarlier]))).toMatch(/tens of seconds are needed/);
  expect(read("41205", contextOf(drill, [dryEarlier]))).toBe(101_205);
});

test("on a drying track the last laps say what is meant, not those of the whole evening", () => {
  const wet = aRun("r1", [101_300, 101_900, 101_500, 101_700], { surface: "wet" });
  const drying = aRun("r2", [95_100, 94_300, 93_600], { surface: "wet", n: 2 });
  expect(read("2950", contextOf(drying, [wet]))).toBe(92_950);
});

test("a warm-up lap is not asked about as a PB on the first evening, as it is none; later it is", () => {
  const warmUp = aRun("r1", [92_000, 92_100, 92_200], { kind: "warm-up" });
  const asks = (hasEarlierBest: boolean) => {
    const reading = parseEntry("0700", contextOf(warmUp, [], [], hasEarlierBest));
    return reading.ok && reading.lap.ms === 90_700 && reading.asks.map(({ why }) => why);
  };
  expect(asks(false)).toEqual([]);
  expect(asks(true)).toEqual(["short form PB"]);
});

test("a dry pace run is completed from its session, its page and its PB, in this order", () => {
  const pace = aRun("r1", []);
  expect(contextOf(pace, [dryEarlier], [aRun("p", [93_000])]).usualMs).toBe(91_550);
  expect(contextOf(pace, [], [aRun("p", [93_000])]).usualMs).toBe(93_000);
  expect(contextOf(pace).usualMs).toBe(dryPb.ms);
  expect(contextOf(aRun("r1", [], { kind: "race" }), [dryEarlier]).usualMs).toBe(91_550);
  expect(contextOf(aRun("r1", [], { kind: "race" })).usualMs).toBe(dryPb.ms);
});

test("a lap of a rig test's run is read as in any pace run, and its laps are a measure for the next one", () => {
  const rigTest = { id: "test", pair: 1, side: "A" } as const;
  const plain = [contextOf(aRun("r2", []), [dryEarlier]), contextOf(aRun("r2", [91_900]), [dryEarlier])];
  const tested = [
    contextOf(aRun("r2", [], { rigTest }), [aRun("r0", [91_400, 91_500, 91_600, 91_700], { rigTest })]),
    contextOf(aRun("r2", [91_900], { rigTest }), [dryEarlier]),
  ];
  expect(tested).toEqual(plain);
  expect(read("1205", tested[0] as ReturnType<typeof contextOf>)).toBe(91_205);
});
