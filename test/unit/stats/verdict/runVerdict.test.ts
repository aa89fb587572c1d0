import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type RigTest, type Run, type RunOfTest, unknown } from "#domain";
import { type RunBasis, type RunVerdict, runReport, runVerdict } from "#stats";
import { aRun, choices, type Told } from "../someRows.ts";

const level = 84_000;
/** s is 200 ms: beyond 329 ms a run is faster or slower. Scatters under 125 ms are steady. */
const basis: RunBasis = {
  level: { known: true, value: level },
  spread: { known: true, value: { s: 200, distances: [-300, -100, 0, 50, 150, 250] } },
  scatters: { known: true, value: { lowerQuartile: 125, each: [100, 120, 130, 160, 200, 240] } },
  pause: undefined,
};
const noSpread: RunBasis = {
  ...basis,
  spread: unknown({ needs: 6, of: "pace run", has: 2 }),
  scatters: unknown({ needs: 6, of: "pace run", has: 2 }),
};
const nothing: RunBasis = {
  ...noSpread,
  level: unknown({ needs: 2, of: "session", has: 0 }),
};

interface Asked {
  readonly basis?: RunBasis;
  readonly runsBefore?: readonly Run[];
  readonly tests?: readonly RigTest[];
  readonly run?: Partial<Run>;
}

function verdictOf(
  laps: readonly Told[],
  { basis: by = basis, runsBefore = [], tests = [], run }: Asked = {},
) {
  return runVerdict({
    run: aRun(9, laps, run),
    runsBefore,
    basis: by,
    tests,
    preferences: choices,
  });
}

const wordOf = (laps: readonly Told[], asked?: Asked) => verdictOf(laps, asked).word;
/** Laps that differ a good deal, about a usual lap. */
const uneven = (usual: number): number[] => [-300, 250, -200, 300, 0, -150, 200].map((ms) => usual + ms);
/** Laps that hardly differ. */
const even = (usual: number): number[] => [-50, 20, -20, 50, 0].map((ms) => usual + ms);
const spun = (...laps: number[]): Told[] => laps.map((ms) => [ms + 6_000, "spin"]);

describe("the rule of the verdict, in its order", () => {
  it("untidy comes first: two laps and three in ten lost, however fast the others are", () => {
    expect(wordOf([...spun(84_000, 84_000, 84_000), ...even(82_000)])).toBe("untidy");
    expect(wordOf([[undefined, "off"], [undefined], ...even(82_000)])).toBe("faster");
    expect(wordOf([[undefined, "off"], [undefined], ...even(82_000).slice(1)])).toBe("untidy");
    expect(wordOf([...spun(84_000, 84_000, 84_000), ...even(82_000), ...even(82_000)])).toBe("faster");
    expect(wordOf([...spun(84_000), 82_000, 82_100])).toBe("too few");
  });

  it("out and in laps, cuts and traffic make no run untidy", () => {
    const others: Told[] = [
      [95_000, "out"],
      [84_000, "cut"],
      [86_000, "traffic"],
      [97_000, "in"],
    ];
    expect(wordOf([...others, ...uneven(84_000)])).toBe("as usual");
    expect(verdictOf([...others, ...spun(84_000, 84_000), ...even(82_000)]).run).toEqual({
      laps: 9,
      clean: 5,
      lost: [5, 6],
      pace: 5,
      driven: 11,
    });
  });

  it("too few comes before faster: under five clean pace laps", () => {
    expect(wordOf(even(82_000).slice(1))).toBe("too few");
    expect(wordOf(even(82_000))).toBe("faster");
    expect(wordOf([[84_000, "cut"]])).toBe("too few");
  });

  it("faster and slower lie beyond 1.645 s, and not at it", () => {
    expect(wordOf(uneven(level - 330))).toBe("faster");
    expect(wordOf(uneven(level - 329))).toBe("as usual");
    expect(wordOf(uneven(level + 329))).toBe("as usual");
    expect(wordOf(uneven(level + 330))).toBe("slower");
  });

  it("faster comes before steady", () => {
    expect(wordOf(even(level - 400))).toBe("faster");
    expect(wordOf(even(level))).toBe("steady");
  });

  it("steady is a scatter under the lower quartile of the driver's own, where six are known", () => {
    expect(wordOf(uneven(level))).toBe("as usual");
    expect(wordOf(even(level), { basis: { ...basis, scatters: noSpread.scatters } })).toBe("as usual");
    expect(wordOf(even(level), { basis: { ...basis, spread: noSpread.spread } })).toBe("steady");
  });

  it("steady is no run that is only as even as the quartile, and none whose evenness is not known", () => {
    const steady = verdictOf(even(level));
    const lowerQuartile = steady.word === "steady" ? steady.scatterMs : Number.NaN;
    const scatters = { known: true, value: { lowerQuartile, each: [] } } as const;
    expect(wordOf(even(level), { basis: { ...basis, scatters } })).toBe("as usual");
    const inTenths = even(level).map((ms): Told => ({ ms, decimals: 1 }));
    expect(wordOf(inTenths)).toBe("as usual");
  });

  it("as usual is the word of a tested distance: without a spread of one's own a run is only counted", () => {
    expect(verdictOf(uneven(80_000), { basis: noSpread })).toMatchObject({
      word: "counted",
      because: "not told yet",
      missing: { needs: 6, of: "pace run", has: 2 },
      against: { ms: -4_000, from: "level" },
      run: { laps: 7, clean: 7 },
    });
    expect(wordOf(even(level).slice(1), { basis: noSpread })).toBe("too few");
    expect(wordOf([...spun(84_000, 84_000, 84_000), ...even(82_000)], { basis: noSpread })).toBe("untidy");
  });
});

describe("what gets no comparing word", () => {
  const why = (laps: readonly Told[], asked?: Asked) => {
    const verdict = verdictOf(laps, asked);
    return verdict.word === "counted" ? verdict.because : verdict.word;
  };

  it.each<[string, Partial<Run>]>([
    ["guest", { guest: "Jo" }],
    ["warmUp", { kind: "warm-up" }],
    ["drill", { kind: "drill" }],
    ["easy", { effort: "easy" }],
    ["easy", { effort: "learning" }],
    ["partly written", { lapsDriven: 12 }],
    ["partly written", { summary: { laps: 8 } }],
    ["warmUp", { kind: "warm-up", surface: "wet" }],
    ["easy", { effort: "easy", surface: "damp" }],
  ])("%s: %o", (because, run) => {
    expect(why(spun(1, 2, 3, 4, 5, 6), { run })).toBe(because);
  });

  it("a race shows grid and finish", () => {
    const run = { kind: "race", gridPlace: 5, finishPlace: 3 } as const;
    expect(verdictOf(even(82_000), { run })).toMatchObject({ word: "race", grid: 5, finish: 3 });
  });

  it("a wet run without a level of its own or wet laps before, and a dry one without either", () => {
    const wet = { surface: "wet" } as const;
    const before = [aRun(1, uneven(95_000), { id: "wet before", ...wet })];
    expect(why(even(95_000), { basis: nothing, run: wet })).toBe("wet");
    expect(
      why(even(95_000), { basis: nothing, run: wet, runsBefore: [aRun(1, even(84_000), { id: "dry" })] }),
    ).toBe("wet");
    expect(why(even(95_000), { basis: nothing, run: wet, runsBefore: before })).toBe("not told yet");
    expect(why(even(84_000), { basis: nothing })).toBe("nothing to compare with");
    const guests = [aRun(1, even(84_000), { id: "a guest's", guest: "" })];
    expect(why(even(84_000), { basis: nothing, runsBefore: guests })).toBe("nothing to compare with");
    expect(wordOf(uneven(84_400), { run: wet })).toBe("slower");
  });

  it("the first 20 laps after a break, those of evenings since and of tonight counted, a guest's not", () => {
    const after = (lapsSince: number): RunBasis => ({ ...basis, pause: { days: 17, lapsSince } });
    const guests = aRun(2, [...uneven(84_000), ...uneven(84_000)], { id: "b", guest: "" });
    const before = [aRun(1, uneven(84_000), { id: "a" }), guests];
    expect(verdictOf(even(82_000), { basis: after(12), runsBefore: before })).toMatchObject({
      word: "counted",
      because: "after a break",
      days: 17,
    });
    expect(why(even(82_000), { basis: after(13), runsBefore: before })).toBe("faster");
    expect(why(even(82_000), { basis: after(20) })).toBe("faster");
  });
});

describe("a run of a rig test", () => {
  const test: RigTest = {
    id: "test",
    createdAt: 0,
    updatedAt: 0,
    comboId: "combo",
    question: "",
    rigA: "a",
    rigB: "b",
    pairsPlanned: 6,
    level: 0.1,
    seed: 1,
    pairs: [{ first: "B", runB: "run s 9" }, { first: "A" }],
  };
  const asked = (pairs: RigTest["pairs"], laps: readonly Told[] = even(82_000)) =>
    verdictOf(laps, { tests: [{ ...test, pairs }] });

  it("says whether it is valid, and nothing of its speed", () => {
    expect(asked(test.pairs)).toEqual({
      word: "rig test",
      isValid: true,
      why: undefined,
      run: { laps: 5, clean: 5, lost: [], pace: 5, driven: 5 },
    });
    expect(asked(test.pairs, even(82_000).slice(1))).toMatchObject({ isValid: false });
    expect(verdictOf(even(82_000), { tests: [test], run: { surface: "wet" } })).toMatchObject({
      word: "rig test",
      isValid: false,
      why: { because: "figure", reason: { because: "not compared", run: "wet" } },
    });
  });

  it("is one that says so itself, though its test is gone", () => {
    const own = (rigTest: RunOfTest) => verdictOf(even(82_000), { run: { rigTest } });
    expect(own({ id: "test", pair: 1, side: "A" })).toMatchObject({ word: "rig test", isValid: true });
    expect(own({ id: "test", pair: 1, side: "A", void: "a dog" })).toMatchObject({
      isValid: false,
      why: { because: "void", words: "a dog" },
    });
  });

  it("is no reference for the runs after it", () => {
    const before = [aRun(1, uneven(84_000), { id: "tested" })];
    const tests = [{ ...test, pairs: [{ first: "A", runA: "tested" } as const] }];
    const itself = before.map((run) => ({ ...run, rigTest: { id: "test", pair: 1, side: "A" } as const }));
    for (const about of [{ runsBefore: before, tests }, { runsBefore: itself }])
      expect(verdictOf(even(84_000), { basis: nothing, ...about })).toMatchObject({
        because: "nothing to compare with",
      });
  });
});

describe("the distance", () => {
  it("is the run's usual lap less the level, else less the usual lap of tonight's runs before", () => {
    expect(verdictOf(uneven(84_100))).toMatchObject({
      against: { ms: 100, from: "level", referenceMs: level },
    });
    const before = [
      aRun(1, even(84_400), { id: "a" }),
      aRun(2, even(90_000), { id: "drill", kind: "drill" }),
      aRun(3, even(91_000), { id: "part", lapsDriven: 9 }),
      aRun(4, even(95_000), { id: "damp", surface: "damp" }),
      aRun(5, even(70_000), { id: "race", kind: "race" }),
    ];
    expect(verdictOf(uneven(84_100), { basis: nothing, runsBefore: before })).toMatchObject({
      word: "counted",
      because: "not told yet",
      against: { ms: -300, from: "tonight", referenceMs: 84_400 },
    });
  });
});

describe("whatever is driven", () => {
  const lap = fc.oneof(
    fc.integer({ min: 80_000, max: 90_000 }),
    fc.constantFrom<Told>(
      [89_000, "spin"],
      [84_100, "cut"],
      [undefined, "off"],
      [90_000, "out"],
      [85_000, "traffic"],
    ),
  );
  const laps = fc.array(lap, { minLength: 1, maxLength: 20 });
  const isJudged = (verdict: RunVerdict) => "against" in verdict;

  it("faster is never said of three lost laps in ten, nor of under five clean ones, nor of a positive distance", () => {
    fc.assert(
      fc.property(laps, (driven) => {
        const verdict = verdictOf(driven);
        if (verdict.word !== "faster" && verdict.word !== "slower") return;
        expect(verdict.run.lost.length < 2 || verdict.run.lost.length / verdict.run.laps < 0.3).toBe(true);
        expect(verdict.run.pace).toBeGreaterThanOrEqual(5);
        expect(Math.sign(verdict.against.ms)).toBe(verdict.word === "faster" ? -1 : 1);
      }),
    );
  });

  it("untidy by the verdict is untidy by what the run says and by what is to be done next", () => {
    fc.assert(
      fc.property(laps, (driven) => {
        const { isUntidy, mistakes, flyingLaps } = runReport({
          run: aRun(9, driven),
          runsBefore: [],
          preferences: choices,
        });
        const { word, run } = verdictOf(driven);
        expect([isUntidy, mistakes, flyingLaps]).toEqual([word === "untidy", run.lost.length, run.laps]);
      }),
    );
  });

  it("the same laps faster by a second are never slower by the word", () => {
    const rank = { faster: 0, slower: 2 } as const;
    const of = (verdict: RunVerdict) => rank[verdict.word as keyof typeof rank] ?? 1;
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 82_000, max: 88_000 }), { minLength: 5, maxLength: 12 }),
        (driven) => {
          const [slow, fast] = [verdictOf(driven), verdictOf(driven.map((ms) => ms - 1000))];
          expect(isJudged(slow) && isJudged(fast)).toBe(true);
          expect(of(fast)).toBeLessThanOrEqual(of(slow));
        },
      ),
    );
  });
});
