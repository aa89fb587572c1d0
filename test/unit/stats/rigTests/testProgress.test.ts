import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RigTest, Run } from "#domain";
import { type RunAside, testProgress, testRuns } from "#stats";
import { choices } from "../someRows.ts";
import { aRigTest, aTestRun, cleanLaps } from "./aRigTest.ts";

const progress = (test: RigTest, runs: readonly Run[], evening?: number) =>
  testProgress(test, runs, choices, evening === undefined ? undefined : `evening ${evening}`);

const whys = (voided: readonly RunAside[]) =>
  voided.map(({ pair, side, why }) => `${pair}${side} ${why.because}`);

describe("the place that comes next", () => {
  it("follows the drawn order, pair by pair", () => {
    const test = aRigTest("BA");
    const runs = ["1B", "1A", "2A", "2B"].map((place, n) => aTestRun(1, n + 1, place));
    const places = [0, 1, 2, 3].map((driven) => progress(test, runs.slice(0, driven), 1).next);
    expect(places).toEqual([
      { pair: 1, side: "B", isFirst: true },
      { pair: 1, side: "A", isFirst: false },
      { pair: 2, side: "A", isFirst: true },
      { pair: 2, side: "B", isFirst: false },
    ]);
    expect(progress(test, runs, 1)).toMatchObject({ complete: 2, planned: 2, isOver: true, voided: [] });
    expect(progress(test, runs, 1).next).toBeUndefined();
  });

  it("is that of a run that was void, or had fewer than five clean laps", () => {
    const test = aRigTest("AB");
    const short = aTestRun(1, 1, "1A", cleanLaps(4));
    expect(progress(test, [short], 1)).toMatchObject({ next: { pair: 1, side: "A", isFirst: true } });
    expect(progress(test, [short], 1).voided).toMatchObject([
      { why: { because: "figure", reason: { needs: 5, of: "clean lap", has: 4 } }, laps: 4 },
    ]);
    const runs = [short, aTestRun(1, 2, "1A"), aTestRun(1, 3, "1B dog"), aTestRun(1, 4, "1B")];
    expect(progress(test, runs.slice(0, 3), 1).next).toEqual({ pair: 1, side: "B", isFirst: false });
    const all = progress(test, runs, 1);
    expect(all.complete).toBe(1);
    expect(all.pairs[0]).toMatchObject({ a: { n: 2 }, b: { n: 4 } });
    expect(whys(all.voided)).toEqual(["1A figure", "1B void"]);
    expect(all.voided[1]?.why).toEqual({ because: "void", words: "dog" });
  });

  it("begins a pair anew that was half driven on another evening", () => {
    const test = aRigTest("AB");
    const half = aTestRun(1, 1, "1A");
    expect(progress(test, [half], 1).next).toEqual({ pair: 1, side: "B", isFirst: false });
    const other = progress(test, [half], 2);
    expect(other.next).toEqual({ pair: 1, side: "A", isFirst: true });
    expect(whys(other.voided)).toEqual(["1A alone"]);
    expect(other.pairs[0]).toEqual({ n: 1, first: "A" });
    expect(progress(test, [half]).pairs[0]?.a, "no session is asked about").toMatchObject({ n: 1 });
    const driven = progress(test, [half, aTestRun(2, 1, "1A"), aTestRun(2, 2, "1B")], 2);
    expect(driven).toMatchObject({ complete: 1, pairs: [{ a: { sessionId: "evening 2" } }, {}] });
    expect(whys(driven.voided)).toEqual(["1A alone"]);
    const across = progress(test, [half, aTestRun(2, 1, "1B")], 2);
    expect(across.complete).toBe(0);
    expect(whys(across.voided)).toEqual(["1A alone", "1B second first"]);
  });

  it("finishes a pair begun this evening before another place", () => {
    const test = aRigTest("AA");
    const runs = [aTestRun(1, 1, "1A wrong"), aTestRun(1, 2, "1B"), aTestRun(1, 3, "2A")];
    expect(progress(test, runs, 1).next).toEqual({ pair: 2, side: "B", isFirst: false });
  });

  it("is none once the test has ended", () => {
    const ended = aRigTest("AB", { endedAt: 9 });
    expect(progress(ended, [], 1)).toMatchObject({ isOver: true, next: undefined, inHand: undefined });
  });
});

describe("a run that does not count", () => {
  it.each([
    ["a guest's", { guest: "Ida" }, "guest"],
    ["a wet one", { surface: "wet" }, "wet"],
    ["a slow one", { effort: "easy" }, "easy"],
    ["a drill", { kind: "drill" }, "drill"],
    ["a race", { kind: "race" }, "race"],
    ["one only partly written", { lapsDriven: 9 }, "partly written"],
  ] as const)("%s", (_, fields, because) => {
    const found = progress(aRigTest("AB"), [aTestRun(1, 1, "1A", cleanLaps(6), fields)], 1);
    expect(found.voided).toMatchObject([
      { why: { because: "figure", reason: { because: "not compared", run: because } }, laps: 0 },
    ]);
    expect(found.next).toEqual({ pair: 1, side: "A", isFirst: true });
  });

  it("with laps that had a mistake has fewer clean ones", () => {
    const laps = [...cleanLaps(4), [90_000, "off"] as const];
    expect(progress(aRigTest("A"), [aTestRun(1, 1, "1A", laps)], 1).voided).toMatchObject([{ laps: 4 }]);
  });

  it("leaves out the first laps that the driver lets settle", () => {
    const found = testProgress(
      aRigTest("A"),
      [aTestRun(1, 1, "1A", cleanLaps(6))],
      { ...choices, settlingLaps: 2 },
      "evening 1",
    );
    expect(found.voided).toMatchObject([{ laps: 4 }]);
  });

  it("by its scatter needs laps known to all decimals", () => {
    const rough = cleanLaps(5).map((ms) => ({ ms, decimals: 1 }));
    const run = aTestRun(1, 1, "1A", rough);
    expect(progress(aRigTest("AB"), [run], 1).voided).toEqual([]);
    expect(progress(aRigTest("AB", { figure: "scatter" }), [run], 1).voided).toHaveLength(1);
  });

  it("is a second one for a filled place: the first stands, whatever came of the later one", () => {
    const runs = [aTestRun(1, 1, "1A"), aTestRun(1, 2, "1A"), aTestRun(1, 3, "1B"), aTestRun(1, 4, "1B")];
    const found = progress(aRigTest("AB"), runs, 1);
    expect(found.pairs[0]).toMatchObject({ a: { n: 1 }, b: { n: 3 } });
    expect(whys(found.voided)).toEqual(["1A again", "1B again"]);
  });

  it("is one of a pair that was not planned", () => {
    expect(whys(progress(aRigTest("A"), [aTestRun(1, 1, "2A")], 1).voided)).toEqual(["2A not planned"]);
  });
});

describe("the run in hand", () => {
  const open = (place: string, laps: number, n = 1, evening = 1) => {
    const { endedAt: _, ...run } = aTestRun(evening, n, place, cleanLaps(laps));
    return run;
  };

  it("is neither counted nor failed while it has fewer than five laps", () => {
    const found = progress(aRigTest("AB"), [open("1A", 3)], 1);
    expect(found).toMatchObject({
      inHand: { pair: 1, side: "A", isFirst: true, n: 1, laps: 3 },
      next: { pair: 1, side: "A", isFirst: true },
      voided: [],
    });
  });

  it("is in hand until it has ended, however many laps it has: each could move its figure", () => {
    const found = progress(aRigTest("A"), [aTestRun(1, 1, "1A"), open("1B", 6, 2)], 1);
    expect(found.inHand).toMatchObject({ pair: 1, side: "B", laps: 6 });
    expect(found.isOver).toBe(false);
    const half = progress(aRigTest("AB"), [open("1A", 5)], 1);
    expect(half.next).toEqual({ pair: 1, side: "A", isFirst: true });
    expect(progress(aRigTest("AB"), [aTestRun(1, 1, "1A")], 1).next).toMatchObject({ pair: 1, side: "B" });
  });

  it("begins its pair anew on another evening, whichever session is asked about", () => {
    const runs = [aTestRun(0, 1, "1A"), open("1A", 3, 1, 1)];
    for (const asked of [1, undefined])
      expect(progress(aRigTest("A"), runs, asked)).toMatchObject({
        pairs: [{ n: 1, first: "A" }],
        next: { pair: 1, side: "A", isFirst: true },
        voided: [{ sessionId: "evening 0", why: { because: "alone" } }],
      });
  });

  it("is none in a session that is not asked about, nor before a later run", () => {
    expect(whys(progress(aRigTest("AB"), [open("1A", 3)], 2).voided)).toEqual(["1A figure"]);
    const runs = [open("1A", 3), aTestRun(1, 2, "1A")];
    expect(progress(aRigTest("AB"), runs, 1)).toMatchObject({ inHand: undefined, voided: [{ n: 1 }] });
  });

  it("is none where its place is not to be driven", () => {
    expect(whys(progress(aRigTest("AB"), [open("1B", 3)], 1).voided)).toEqual(["1B second first"]);
    const filled = [aTestRun(1, 1, "1A"), open("1A", 2, 2)];
    expect(progress(aRigTest("AB"), filled, 1)).toMatchObject({
      inHand: undefined,
      next: { pair: 1, side: "B" },
      voided: [{ why: { because: "again" } }],
    });
  });
});

describe("any history of a test", () => {
  const aHistory = fc.record({
    order: fc.array(fc.constantFrom("A", "B"), { minLength: 1, maxLength: 6 }).map((all) => all.join("")),
    runs: fc.array(
      fc.record({
        evening: fc.nat(3),
        pair: fc.integer({ min: 1, max: 7 }),
        side: fc.constantFrom("A", "B"),
        laps: fc.integer({ min: 3, max: 7 }),
        isVoid: fc.boolean(),
        isOpen: fc.boolean(),
      }),
      { maxLength: 24 },
    ),
    asked: fc.option(fc.nat(3), { nil: undefined }),
  });
  type History = typeof aHistory extends fc.Arbitrary<infer H> ? H : never;
  const runsOf = ({ runs }: History) =>
    runs.map(({ evening, pair, side, laps, isVoid, isOpen }, n) => {
      const run = aTestRun(evening, n + 1, `${pair}${side}${isVoid ? " because" : ""}`, cleanLaps(laps));
      const { endedAt: _, ...open } = run;
      return isOpen ? open : run;
    });

  it("has a next place that is not filled, and no more pairs than planned", () => {
    fc.assert(
      fc.property(aHistory, (history) => {
        const test = aRigTest(history.order);
        const { pairs, complete, planned, next, isOver } = progress(test, runsOf(history), history.asked);
        expect(complete).toBeLessThanOrEqual(planned);
        expect(complete).toBe(pairs.filter(({ a, b }) => a && b).length);
        expect(isOver).toBe(complete === planned);
        expect(next === undefined).toBe(isOver);
        if (next === undefined) return;
        const pair = pairs[next.pair - 1];
        expect(next.side === "A" ? pair?.a : pair?.b).toBeUndefined();
        expect(next.isFirst).toBe(next.side === pair?.first);
        // The second of a pair comes only after its first, in the session that is asked about.
        const other = next.side === "A" ? pair?.b : pair?.a;
        expect(other === undefined).toBe(next.isFirst);
        if (history.asked !== undefined && other) expect(other.sessionId).toBe(`evening ${history.asked}`);
      }),
    );
  });

  it("counts pairs of one evening in the drawn order, of runs that hold, each run once", () => {
    fc.assert(
      fc.property(aHistory, (history) => {
        const test = aRigTest(history.order);
        const runs = runsOf(history);
        const { pairs, voided, inHand } = progress(test, runs, history.asked);
        const counted = pairs.flatMap(({ a, b }) => [a, b].filter((run) => run !== undefined));
        for (const { laps } of counted) expect(laps).toBeGreaterThanOrEqual(5);
        for (const { first, a, b } of pairs) {
          if (a === undefined || b === undefined) continue;
          expect(a.sessionId).toBe(b.sessionId);
          expect(first === "A" ? a.n < b.n : b.n < a.n).toBe(true);
        }
        const seen = [...counted, ...voided, ...(inHand ? [inHand] : [])].map(({ runId }) => runId);
        expect(seen.toSorted()).toEqual(runs.map(({ id }) => id).toSorted());
      }),
    );
  });
});

it("the runs of a test say so themselves, and in old rows the test names them", () => {
  const old = aRigTest("AB", {
    pairs: [{ first: "A", runA: "1/2 9B", runB: "x" }, { first: "B" }],
  });
  const { rigTest: _, ...plain } = aTestRun(1, 2, "9B");
  const others = [
    aTestRun(1, 3, "2B"),
    aTestRun(1, 1, "1B", [], { rigTest: { id: "other", pair: 1, side: "B" } }),
  ];
  expect(testRuns(old, [...others, plain]).map(({ run, place }) => [run.n, place.pair, place.side])).toEqual([
    [2, 1, "A"],
    [3, 2, "B"],
  ]);
});
