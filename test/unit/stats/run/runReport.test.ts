import { describe, expect, it } from "vitest";
import { type RunReportInput, runReport } from "#stats";
import { aRun, choices, type Told } from "../someRows.ts";

const even = (count: number, from = 84_000): number[] =>
  Array.from({ length: count }, (_, lap) => from + ((lap * 30) % 50));
const report = (input: Partial<RunReportInput> & Pick<RunReportInput, "run">) =>
  runReport({ runsBefore: [], preferences: choices, ...input });
const pb = { ms: 83_900, decimals: 3 };

describe("figures of a run", () => {
  it("best, usual and scatter are of its pace laps", () => {
    const found = report({ run: aRun(1, [[95_000, "out"], ...even(6), [89_000, "off"]]) });
    expect(found).toMatchObject({
      isPace: true,
      laps: 6,
      best: { known: true, value: { ms: 84_000, decimals: 3 } },
      usual: { known: true, value: 84_015 },
      scatter: { known: true },
      mistakes: 1,
    });
    expect(found.counts).toMatchObject({ pace: 6, outOrIn: 1, mistake: 1, driven: 8 });
  });

  it("one lap is no usual lap, unless the driver gave one", () => {
    expect(report({ run: aRun(1, even(1)) }).usual).toEqual({
      known: false,
      reason: { needs: 2, of: "clean lap", has: 1 },
    });
    expect(report({ run: aRun(1, even(2)) }).usual.known).toBe(true);
    expect(report({ run: aRun(1, [], { summary: { laps: 8, usualMs: 84_300 } }) }).usual).toEqual({
      known: true,
      value: 84_300,
    });
  });

  it("a drill, a wet run and a guest's have figures of their own, from their clean laps", () => {
    const kinds = [
      [{ kind: "drill" }, "drill"],
      [{ kind: "warm-up" }, "warmUp"],
      [{ surface: "wet" }, "wet"],
      [{ kind: "race", surface: "damp" }, "wet"],
      [{ effort: "easy" }, "easy"],
      [{ guest: "Ida" }, "guest"],
    ] as const;
    for (const [fields, run] of kinds) {
      const found = report({ run: aRun(1, [...even(6), [89_000, "off"]], fields), pb, targetMs: 84_000 });
      expect(found).toMatchObject({ isPace: false, usual: { known: true } });
      for (const against of [found.againstRunBefore, found.againstTarget, found.againstBest])
        expect(against).toEqual({ known: false, reason: { because: "not compared", run } });
    }
  });

  it("a warm-up after the page's first best is told of the best it took, and of nothing else", () => {
    const found = report({ run: aRun(1, [83_800, ...even(4)], { kind: "warm-up" }), pb, targetMs: 84_000 });
    expect(found.againstBest).toMatchObject({ known: true, value: { ms: -100, isNew: true } });
    expect(found.againstTarget.known).toBe(false);
  });

  it("a race is read without its start, and measured against the PB and the target, but no practice run", () => {
    const found = report({ run: aRun(2, [95_000, ...even(6)], { kind: "race" }), pb, targetMs: 84_000 });
    expect(found).toMatchObject({
      laps: 6,
      usual: { value: 84_015 },
      againstBest: { value: { ms: 100 } },
      againstTarget: { value: { best: 0 } },
      againstRunBefore: { reason: { because: "not compared", run: "race" } },
    });
  });

  it("a pace run that is written in part is not compared, and one of mistakes alone lacks pace laps", () => {
    const partly = report({ run: aRun(1, even(6), { lapsDriven: 9 }) });
    expect(partly.againstRunBefore).toMatchObject({ reason: { run: "partly written" } });
    const mistakes = report({
      run: aRun(1, [
        [90_000, "off"],
        [91_000, "spin"],
      ]),
    });
    expect(mistakes.againstRunBefore).toMatchObject({ reason: { needs: 5, of: "pace lap", has: 0 } });
  });

  it("a summary run gives what was written of it", () => {
    const summary = { laps: 12, bestMs: 84_100, bestDecimals: 1, usualMs: 84_900, usualDecimals: 1, off: 2 };
    expect(report({ run: aRun(1, [], { summary }) })).toMatchObject({
      best: { known: true, value: { ms: 84_100, decimals: 1, lapId: undefined } },
      usual: { known: true, value: 84_900 },
      usualDecimals: 1,
      isUsualGiven: true,
      scatter: { known: false, reason: { needs: 5, of: "clean lap", has: 0 } },
      mistakes: 2,
      counts: { driven: 12, notWritten: 12 },
    });
  });

  it("three laps give best and usual, and say what the rest needs", () => {
    const found = report({ run: aRun(1, even(3)) });
    expect(found.usual.known).toBe(true);
    expect(found.scatter).toEqual({ known: false, reason: { needs: 5, of: "pace lap", has: 3 } });
    expect(found.trend).toEqual({ known: false, reason: { needs: 6, of: "pace lap", has: 3 } });
  });

  it("enough pace laps and too few exact ones give a median, and the reason there is no scatter", () => {
    const found = report({ run: aRun(1, [...even(4), { ms: 84_000, decimals: 1 }]) });
    expect(found).toMatchObject({ laps: 5, usual: { known: true } });
    expect(found.scatter).toEqual({
      known: false,
      reason: { needs: 5, of: "exact pace lap", has: 4, rough: 1 },
    });
  });

  it("a wet run that is too short lacks clean laps, not pace laps", () => {
    const found = report({ run: aRun(1, even(3), { surface: "wet" }) });
    expect(found.scatter).toEqual({ known: false, reason: { needs: 5, of: "clean lap", has: 3 } });
    expect(found.trend).toEqual({ known: false, reason: { needs: 6, of: "clean lap", has: 3 } });
  });

  it("no laps give reasons only", () => {
    const found = report({ run: aRun(1, []) });
    for (const figure of [found.best, found.usual, found.scatter, found.trend, found.againstBest]) {
      expect(figure.known).toBe(false);
    }
    expect(found.finding).toEqual({ kind: "no times", driven: 0 });
  });
});

describe("against the run before", () => {
  const slow = aRun(1, even(8, 84_500));

  it("compares with the nearest pace run, and is clear when the interval leaves out zero", () => {
    const drill = aRun(2, even(8, 90_000), { kind: "drill" });
    const found = report({ run: aRun(3, even(8)), runsBefore: [slow, drill] });
    expect(found.againstRunBefore).toMatchObject({ known: true, value: { n: 1, ms: -500, isClear: true } });
  });

  it("gives the reason where one of them is too short", () => {
    expect(report({ run: aRun(2, even(3)), runsBefore: [slow] }).againstRunBefore).toEqual({
      known: false,
      reason: { needs: 5, of: "pace lap", has: 3 },
    });
    expect(report({ run: aRun(2, even(8)), runsBefore: [aRun(1, even(3))] }).againstRunBefore).toEqual({
      known: false,
      reason: { needs: 5, of: "pace lap", has: 3, run: 1 },
    });
    expect(report({ run: aRun(1, even(8)) }).againstRunBefore).toEqual({
      known: false,
      reason: { because: "no pace run before" },
    });
  });
});

describe("against target and personal best", () => {
  it("counts the laps at the target", () => {
    expect(report({ run: aRun(1, even(5)), targetMs: 84_010 }).againstTarget).toEqual({
      known: true,
      value: {
        targetMs: 84_010,
        best: -10,
        bestDecimals: 3,
        usual: 10,
        usualDecimals: 3,
        reached: 2,
        laps: 5,
      },
    });
  });

  it("a time in tenths that may be level is level, never new", () => {
    const tenths = aRun(1, [{ ms: 83_900, decimals: 1 }]);
    expect(report({ run: tenths, pb }).againstBest).toMatchObject({ value: { isNew: false, isLevel: true } });
    const maybe = report({ run: tenths, pb: { ms: 83_950, decimals: 3 } });
    expect(maybe.againstBest).toMatchObject({ value: { ms: -50, isNew: false, isLevel: true } });
    const inside = report({ run: aRun(1, [83_950]), pb: { ms: 83_900, decimals: 1 } });
    expect(inside.againstBest).toMatchObject({ value: { isNew: false, isLevel: true } });
  });
});

describe("the one thing a run says", () => {
  const kindOf = (input: Parameters<typeof report>[0]) => report(input).finding.kind;

  it("a guest drove", () => expect(kindOf({ run: aRun(1, even(5), { guest: "" }), pb })).toBe("guest"));
  it("a new best", () =>
    expect(report({ run: aRun(1, [83_800, ...even(5)]), pb }).finding).toEqual({
      kind: "new best",
      ms: 83_800,
      decimals: 3,
      pbMs: 83_900,
      pbDecimals: 3,
    }));
  it("with a new best, the hardest best-lap target that no lap before had reached", () => {
    const reached = (ms: number | Told, targets: readonly number[], before = 83_900) =>
      report({ run: aRun(1, [ms, ...even(5)]), pb: { ms: before }, bestTargetsMs: targets }).finding;
    expect(reached(83_800, [83_799, 83_800, 83_850, 83_900])).toMatchObject({ reachedMs: 83_800 });
    expect(reached(83_800, [83_900, 84_200])).toMatchObject({ kind: "new best", reachedMs: undefined });
    expect(reached(83_800, [83_799])).toMatchObject({ kind: "new best", reachedMs: undefined });
    // 83.8 may have been 83.899.
    expect(reached({ ms: 83_800, decimals: 1 }, [83_898], 83_950)).toMatchObject({ reachedMs: undefined });
    expect(reached({ ms: 83_800, decimals: 1 }, [83_899], 83_950)).toMatchObject({ reachedMs: 83_899 });
    expect(report({ run: aRun(1, even(5)), bestTargetsMs: [90_000] }).finding).toMatchObject({
      kind: "first best",
      reachedMs: 90_000,
    });
  });
  it("a first best", () => expect(kindOf({ run: aRun(1, even(5)) })).toBe("first best"));
  it("many mistakes", () =>
    expect(report({ run: aRun(1, [...even(4), [undefined, "off"], [90_000, "spin"]]), pb }).finding).toEqual({
      kind: "mistakes",
      mistakes: 2,
      flyingLaps: 6,
    }));
  it("no mistakes first while fewer than three laps in ten were lost, out and in laps not among them", () => {
    const spins: Told[] = [
      [90_000, "spin"],
      [91_000, "spin"],
    ];
    expect(kindOf({ run: aRun(1, [...even(5), ...spins]), pb })).not.toBe("mistakes");
    expect(kindOf({ run: aRun(1, [[99_000, "out"], ...even(4), ...spins, [99_000, "in"]]), pb })).toBe(
      "mistakes",
    );
  });
  it("the target reached", () =>
    expect(kindOf({ run: aRun(1, even(6)), pb, targetMs: 84_100 })).toBe("target reached"));
  it("no target reached by a usual lap in tenths that may be slower, nor a lap of such counted at it", () => {
    const tenths = (ms: number) =>
      report({
        run: aRun(1, new Array<Told>(6).fill({ ms, decimals: 1 })),
        pb: { ms: 83_000 },
        targetMs: 84_050,
      });
    expect(tenths(84_000).finding.kind).not.toBe("target reached");
    expect(tenths(84_000).againstTarget).toMatchObject({ value: { usual: -50, reached: 0, laps: 6 } });
    expect(tenths(83_900).finding.kind).toBe("target reached");
    expect(tenths(83_900).againstTarget).toMatchObject({ value: { reached: 6 } });
  });
  it("a clear change from the run before", () =>
    expect(kindOf({ run: aRun(2, even(8)), runsBefore: [aRun(1, even(8, 84_500))], pb })).toBe(
      "against run before",
    ));
  it("a drift inside the run", () =>
    expect(
      kindOf({
        run: aRun(
          1,
          [1, 2, 3, 4, 5, 6, 7, 8].map((lap) => 84_000 + 60 * lap),
        ),
        pb,
      }),
    ).toBe("drift"));
  it("else the spread", () => expect(kindOf({ run: aRun(1, even(5)), pb })).toBe("spread"));
  it("else the best of a few laps", () =>
    expect(report({ run: aRun(1, [84_500, 84_200]), pb }).finding).toEqual({
      kind: "few",
      laps: 2,
      bestMs: 84_200,
      decimals: 3,
    }));
});

it("a lap far out is pointed at by its place in the run", () => {
  const run = aRun(1, [[95_000, "out"], ...even(8), 90_000]);
  expect(report({ run }).pointedAt).toEqual([
    { lapId: "run s 1 lap 10", number: 10, reasons: ["far out", "outside the limits"] },
  ]);
});
