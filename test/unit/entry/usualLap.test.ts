import { describe, expect, it } from "vitest";
import { isAlike, knownFrom, measuresOf, parseEntry, usualLap } from "#entry";
import { aRun } from "../stats/someRows.ts";
import { aContext } from "./aContext.ts";

describe("the usual lap that short forms are completed from", () => {
  const around = { known: { page: [86_000, 86_200] }, pbMs: 85_000, surfaceMs: 99_000 };
  const run = [91_000, 92_000, 93_000];
  const pace = [88_000, 88_500, 89_000];

  it("is that of the run's last five laps, from three on", () => {
    expect(usualLap({ last: run, pace }, around)).toBe(92_000);
    expect(usualLap({ last: [120_000, 120_000, 120_000, ...run, 91_500, 91_500], pace }, around)).toBe(
      91_500,
    );
    expect(usualLap({ last: run.slice(0, 2), pace }, around)).toBe(88_500);
  });

  it("else the session's, else the page's, else the PB where it says what is usual, else the surface's", () => {
    expect(usualLap({ last: [], pace }, around)).toBe(88_500);
    expect(usualLap({ last: [], pace: [] }, around)).toBe(86_100);
    expect(usualLap({ last: [], pace: [] }, { ...around, known: {} })).toBe(85_000);
    expect(usualLap({ last: [], pace: [] }, { pbMs: 85_000, surfaceMs: 99_000 })).toBe(85_000);
    expect(usualLap({ last: [], pace: [] }, { ...around, known: {}, isPbUsual: false })).toBe(99_000);
    expect(usualLap({ last: [], pace: [] }, {})).toBeUndefined();
  });
});

describe("a usual lap that is too little to say which ten seconds are meant", () => {
  const read = (text: string, changes: Parameters<typeof aContext>[0]) => {
    const reading = parseEntry(text, aContext(changes));
    return reading.ok ? reading.lap.ms : reading.problem.wrong;
  };
  const first = { usualMs: 84_000, paceTimes: [84_000], runTimes: [84_000] };

  it("is one lap of this session that no PB bears out: seconds without their tens are refused", () => {
    expect(read("4123", { ...first, pbMs: undefined })).toMatch(/tens of seconds/);
    expect(read("4123", { ...first, pbMs: 84_000 })).toMatch(/tens of seconds/);
    expect(read("4123", { ...first, pbMs: 80_999 })).toMatch(/tens of seconds/);
    expect(read("24123", { ...first, pbMs: undefined })).toBe(84_123);
  });

  it("is not one that an older PB within three seconds bears out, nor three laps", () => {
    expect(read("4123", { ...first, pbMs: 81_000 })).toBe(84_123);
    expect(read("4123", { ...first, pbMs: undefined, paceTimes: [84_000, 84_010, 84_020] })).toBe(84_123);
  });

  it("is one of other kinds of laps on this surface alone", () => {
    const other = { usualMs: 84_000, surfaceMs: 84_000, paceTimes: [], runTimes: [], pbMs: undefined };
    expect(read("4123", other)).toMatch(/tens of seconds/);
    expect(read("4123", { ...other, known: { page: [84_000] } })).toBe(84_123);
    expect(read("4123", { ...other, pbMs: 83_900 })).toBe(84_123);
    expect(read("4123", { ...other, pbMs: 83_900, isPbUsual: false })).toMatch(/tens of seconds/);
    expect(read("4123", { ...other, surfaceMs: undefined })).toBe(84_123);
  });
});

describe("what is known around a run", () => {
  const own = { kind: "pace", effort: "full", surface: "dry" } as const;

  it("laps are usual for one another of one kind and surface, at pace or not, by the driver or by a guest", () => {
    expect(isAlike(own, { ...own })).toBe(true);
    expect(isAlike(own, { ...own, effort: "brisk" })).toBe(true);
    for (const other of [
      { ...own, kind: "drill" },
      { ...own, surface: "wet" },
      { ...own, effort: "easy" },
      { ...own, guest: "Ana" },
    ] as const)
      expect([isAlike(own, other), isAlike(other, own)]).toEqual([false, false]);
    expect(isAlike({ ...own, guest: "Ana" }, { ...own, guest: "Bo" })).toBe(true);
    expect(isAlike({ ...own, effort: "easy" }, { ...own, effort: "easy" })).toBe(true);
  });

  it("times come sorted, without deleted laps, laps with a mistake and laps without a time", () => {
    const runs = [
      aRun(1, [84_500, [99_000, "off"], [undefined, "spin"], { ms: 83_000, deletedAt: 5 }]),
      aRun(2, [84_900, 84_100]),
    ];
    expect(measuresOf(runs)).toEqual([84_100, 84_500, 84_900]);
    expect(measuresOf([])).toEqual([]);
  });

  it("the page's laps like these, all others here, and each other combo by its usual lap", () => {
    const wet = aRun(1, [95_000], { surface: "wet" });
    const around = {
      session: [aRun(2, [84_200]), wet],
      page: [aRun(3, [84_900, 84_300]), aRun(4, [96_000], { kind: "drill" })],
      layout: [aRun(5, [90_000, 90_400], { comboId: "a" }), aRun(6, [90_800], { comboId: "a" })],
      elsewhere: [
        aRun(7, [60_000], { comboId: "b" }),
        aRun(8, [70_000], { comboId: "c" }),
        aRun(9, [], { comboId: "d" }),
      ],
    };
    expect(knownFrom(own, around, 4000)).toEqual({
      page: [84_300, 84_900],
      here: [95_000, 96_000],
      layout: [90_400],
      lengthMetres: 4000,
      elsewhere: [60_000, 70_000],
    });
  });
});
