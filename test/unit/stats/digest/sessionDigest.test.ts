import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  efforts,
  lapPlaces,
  lapWorths,
  type Run,
  type RunKind,
  remarkKinds,
  runKinds,
  type Session,
  surfaces,
} from "#domain";
import { NO_TIME, sessionDigest } from "#stats";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

const even = (count: number, from = 84_000): number[] =>
  Array.from({ length: count }, (_, lap) => from + 10 * lap);
const digestOf = (runs: readonly Run[], with_ = choices) => sessionDigest(aSession(0), runs, with_);

const anyLap = fc.record({
  ms: fc.option(fc.integer({ min: 60_000, max: 150_000 }), { nil: undefined }),
  kinds: fc.subarray(remarkKinds.map((remark) => remark.kind)),
});
const anyRun = fc
  .record({
    laps: fc.array(anyLap, { maxLength: 12 }),
    kind: fc.constantFrom(...runKinds),
    effort: fc.constantFrom(...efforts),
    surface: fc.constantFrom(...surfaces),
    guest: fc.constantFrom(undefined, undefined, undefined, "Ida"),
    lapsDriven: fc.constantFrom(undefined, undefined, 3, 15),
    summary: fc.constantFrom(undefined, undefined, undefined, {
      laps: 9,
      bestMs: 83_000,
      bestDecimals: 1,
      off: 2,
    }),
  })
  .map(
    ({ laps, guest, lapsDriven, summary, ...fields }) =>
      (n: number) =>
        aRun(
          n,
          laps.map(({ ms, kinds }): Told => [ms, ...kinds]),
          {
            ...fields,
            ...(guest !== undefined && { guest }),
            ...(lapsDriven !== undefined && { lapsDriven }),
            ...(summary !== undefined && { summary }),
          },
        ),
  );
const anySession = fc
  .array(anyRun, { maxLength: 5 })
  .map((makers) => makers.map((make, index) => make(index + 1)));
const settings = { seed: 10, numRuns: 300 };

describe("places of laps", () => {
  it("each lap driven has one place: the counts add up to the laps", () => {
    fc.assert(
      fc.property(anySession, fc.integer({ min: 0, max: 3 }), (runs, settlingLaps) => {
        const { counts } = digestOf(runs, { ...choices, settlingLaps: settlingLaps as 0 | 1 | 2 | 3 });
        expect(lapPlaces.reduce((sum, place) => sum + counts[place], 0)).toBe(counts.driven);
        const driven = runs
          .filter((run) => run.guest === undefined)
          .reduce(
            (sum, run) => sum + Math.max(run.laps.length, run.lapsDriven ?? 0, run.summary?.laps ?? 0),
            0,
          );
        expect(counts.driven).toBe(driven);
      }),
      settings,
    );
  });
});

describe("an untidy session", () => {
  const session = [
    aRun(1, even(3, 90_000), { kind: "warm-up" }),
    aRun(2, [
      [95_000, "out"],
      ...even(6),
      [undefined, "off"],
      [89_000, "spin"],
      [83_000, "cut"],
      [86_000, "traffic"],
    ]),
    aRun(3, even(4, 70_000), { guest: "Ida" }),
    aRun(4, even(5, 92_000), { surface: "wet" }),
    aRun(5, even(4, 88_000), { kind: "drill" }),
    aRun(6, even(2, 83_900), { lapsDriven: 10 }),
    aRun(7, [], { summary: { laps: 8, bestMs: 83_950, bestDecimals: 3, usualMs: 84_300, off: 2 } }),
    aRun(8, even(4, 85_000), { kind: "race" }),
    aRun(9, even(3, 87_000), { effort: "learning" }),
  ];
  const digestOfIt = () => digestOf(session);

  it("counts every lap once, and a guest's in none", () => {
    const digest = digestOfIt();
    expect(digest.counts).toEqual({
      pace: 6,
      settling: 0,
      cut: 1,
      mistake: 1,
      others: 1,
      noTime: 1,
      outOrIn: 1,
      partly: 2,
      easy: 3,
      test: 0,
      wet: 5,
      drill: 4,
      warmUp: 3,
      race: 4,
      notWritten: 16,
      driven: 48,
    });
    expect(digest.guestLaps).toBe(4);
  });

  it("takes pace, spread and best of session from pace laps alone", () => {
    const digest = digestOfIt();
    expect(digest.pace).toMatchObject({ laps: 6, best: 84_000, median: 84_025, bestOfTen: undefined });
  });

  it("takes the personal best from any clean lap of the driver's own, remembered runs and race included", () => {
    const digest = digestOfIt();
    expect(digest.bestClean).toMatchObject({ ms: 83_900, lapId: "run s 6 lap 1", isSummary: false });
  });

  it("counts mistakes with and without a time, and those of a summary", () => {
    const digest = digestOfIt();
    expect(digest.mistakes).toBe(4);
  });

  it("takes the clean share from runs written lap by lap", () => {
    const digest = digestOfIt();
    expect([digest.clean, digest.timed]).toEqual([6 + 3 + 5 + 4 + 4 + 3, 9 + 3 + 5 + 4 + 4 + 3]);
  });

  it("keeps each lap's place and worth, and times, runs and order", () => {
    const digest = digestOfIt();
    const told = (ms: number) => {
      const at = digest.times.indexOf(ms);
      return [lapPlaces[digest.places[at] ?? -1], lapWorths[digest.worths[at] ?? -1]];
    };
    expect(told(89_000)).toEqual(["mistake", "timed"]);
    expect(told(95_000)).toEqual(["outOrIn", "none"]);
    expect(told(84_000)).toEqual(["pace", "best"]);
    expect(told(92_000)).toEqual(["wet", "best"]);
    expect(lapPlaces.map((_, place) => digest.places.filter((one) => one === place).length)).toEqual(
      lapPlaces.map((place) => (place === "notWritten" ? 0 : digest.counts[place])),
    );
    expect(digest.times.filter((ms) => ms === NO_TIME)).toHaveLength(1);
    expect(digest.times).not.toContain(70_000);
    expect(digest.runs.at(0)).toBe(0);
    expect(digest.runs).toHaveLength(digest.times.length);
  });

  it("keeps which laps the driver confirmed as odd", () => {
    const digest = digestOfIt();
    const { odd } = digestOf([aRun(1, even(3)), aRun(2, [84_000, { ms: 900_000, isOdd: true }])]);
    expect(odd).toEqual([4]);
    expect(digest.odd).toEqual([]);
  });

  it("can be cloned between threads", () => {
    const digest = digestOfIt();
    expect(structuredClone(digest)).toEqual(digest);
  });
});

describe("spread", () => {
  it("marks each lap that is known exactly", () => {
    const laps: Told[] = [84_000, { ms: 84_100, decimals: 1 }, { ms: 84_200, source: "memory" }, 84_300];
    expect([...digestOf([aRun(1, laps)]).exact]).toEqual([1, 0, 0, 1]);
  });

  it("leaves out laps from memory and in tenths, which the median keeps", () => {
    const rough: Told[] = [
      { ms: 84_100, decimals: 1 },
      { ms: 84_200, source: "memory" },
    ];
    const { pace } = digestOf([aRun(1, [84_000, 84_050, 84_100, 84_060, ...rough])]);
    expect(pace).toMatchObject({ laps: 6, exactLaps: 4, standardDeviation: undefined });
    expect(pace.consistency).toEqual({
      known: false,
      reason: { needs: 5, of: "exact pace lap", has: 4, rough: 2 },
    });
    expect(pace.median).toBe(84_080);
  });

  it("laps in hundredths are exact where the simulator shows no more", () => {
    const laps = [84_000, 84_050, 84_100, 84_060, 84_020].map((ms): Told => ({ ms, decimals: 2 }));
    expect(digestOf([aRun(1, laps)]).pace.exactLaps).toBe(0);
    expect(digestOf([aRun(1, laps)], { ...choices, displayDecimals: 2 }).pace.exactLaps).toBe(5);
  });

  it("a lap without a time ends a chain of differences, and so does a new run", () => {
    const whole = digestOf([aRun(1, [84_000, 84_000, 84_000, 86_000, 86_000, 86_000])]);
    const broken = digestOf([aRun(1, [84_000, 84_000, 84_000, [undefined, "off"], 86_000, 86_000, 86_000])]);
    const runs = digestOf([aRun(1, [84_000, 84_000, 84_000]), aRun(2, [86_000, 86_000, 86_000])]);
    expect(whole.pace.consistency).toMatchObject({ value: { scatterMs: expect.closeTo(632.46, 1) } });
    expect(broken.pace.consistency).toMatchObject({ value: { scatterMs: 0 } });
    expect(runs.pace.consistency).toMatchObject({ value: { scatterMs: 0 } });
  });
});

describe("the median for the trend", () => {
  it("leaves out the first three pace laps where there are ten, and needs five", () => {
    const ten = [90_000, 89_000, 88_000, ...new Array<number>(7).fill(84_000)];
    expect(digestOf([aRun(1, ten)]).pace.medianForTrend).toBe(84_000);
    expect(digestOf([aRun(1, ten.slice(0, 9))]).pace.medianForTrend).toBe(84_000);
    expect(digestOf([aRun(1, ten.slice(0, 5))]).pace.medianForTrend).toBe(88_000);
    expect(digestOf([aRun(1, ten.slice(0, 4))]).pace.medianForTrend).toBeUndefined();
  });

  it("the driver's settling laps are left out of each run", () => {
    const { counts, pace } = digestOf([aRun(1, even(6)), aRun(2, even(6))], { ...choices, settlingLaps: 2 });
    expect(counts).toMatchObject({ pace: 8, settling: 4 });
    expect(pace.best).toBe(84_020);
  });
});

describe("time at the wheel", () => {
  it("takes the usual lap for each without a time", () => {
    expect(digestOf([aRun(1, [84_000, 84_000, 85_000, [undefined, "off"], 90_000, 84_000])]).drivingMs).toBe(
      427_000 + 84_000,
    );
  });

  it("takes the mean of what was written where no lap is a pace lap, to the millisecond", () => {
    const partly = aRun(1, [84_000, [undefined, "off"], 84_001], { lapsDriven: 6 });
    expect(digestOf([partly]).drivingMs).toBe(168_001 + Math.round(4 * 84_000.5));
    expect(digestOf([aRun(1, [[undefined, "off"], 84_001, 84_000], { kind: "warm-up" })]).drivingMs).toBe(
      252_002,
    );
  });

  it("is none where no lap has a time", () => {
    expect(digestOf([aRun(1, [[undefined, "off"]])]).drivingMs).toBe(0);
  });
});

describe("time from the first moment to the last", () => {
  const { startedAt } = aSession(0);
  const sittingOf = (sitting: number, fields: Partial<Session> = {}, laps: readonly Told[] = [84_000]) =>
    sessionDigest(aSession(0, { endedAt: startedAt + sitting, ...fields }), [aRun(1, laps)], choices)
      .sittingMs;

  it("lies between the time at the wheel and a day", () => {
    expect(sittingOf(3_600_000)).toBe(3_600_000);
    expect(sittingOf(84_001)).toBe(84_001);
    // That of a table: its end was made from the laps.
    expect(sittingOf(84_000)).toBeUndefined();
    expect(sittingOf(86_400_000)).toBe(86_400_000);
    expect(sittingOf(86_400_001)).toBeUndefined();
  });

  it("is not known of a session that ended as it began, nor of one that ended before", () => {
    expect(sittingOf(0, {}, [])).toBeUndefined();
    expect(sittingOf(-5, {}, [])).toBeUndefined();
    expect(sittingOf(1, {}, [])).toBe(1);
  });

  it("is not known where the time of day is not, or no end was noted", () => {
    expect(sittingOf(3_600_000, { isTimeOfDayKnown: false })).toBeUndefined();
    expect(sessionDigest(aSession(0), [aRun(1, [84_000])], choices).sittingMs).toBeUndefined();
  });

  it("is not known of a table that was imported, but where one lap was typed", () => {
    const imported = { ms: 84_000, source: "imported" } as const;
    expect(sittingOf(3_600_000, {}, [imported, imported])).toBeUndefined();
    expect(sittingOf(3_600_000, {}, [imported, 84_000])).toBe(3_600_000);
  });
});

describe("what a run was driven with", () => {
  it("is kept run by run, words of spaces as nothing", () => {
    const runs = [
      aRun(1, [84_000], { tyres: " soft ", setup: "low wing", rigId: "rig 1" }),
      aRun(2, [84_000], { effort: "brisk", surface: "damp", tyres: "  ", setup: "" }),
      aRun(3, [84_000]),
    ];
    const nothing = { tyres: undefined, setup: undefined, rigId: undefined };
    expect(digestOf(runs).runFacts).toEqual([
      { effort: "full", surface: "dry", tyres: "soft", setup: "low wing", rigId: "rig 1" },
      { effort: "brisk", surface: "damp", ...nothing },
      { effort: "full", surface: "dry", ...nothing },
    ]);
  });

  it("is told of each lap by the number of its run", () => {
    const runs = [aRun(1, [84_000]), aRun(2, [70_000], { guest: "Ida" }), aRun(3, [84_100, 84_200])];
    expect([...digestOf(runs).runs]).toEqual([0, 1, 1]);
  });
});

it("carries what its session says and the choices it was made with", () => {
  const session = aSession(3, { comboId: "other", focus: "race pace", targetMs: 83_500 });
  expect(sessionDigest(session, [], { settlingLaps: 2, displayDecimals: 1, marginPercent: 1 })).toMatchObject(
    {
      sessionId: "session 3",
      comboId: "other",
      date: "2026-01-04",
      startedAt: session.startedAt,
      focus: "race pace",
      targetMs: 83_500,
      settlingLaps: 2,
      displayDecimals: 1,
    },
  );
});

describe("sectors", () => {
  it("stand at their lap, also where a lap has fewer than the others", () => {
    const laps: Told[] = [
      84_100,
      { ms: 84_000, sectors: [30_000, 54_000] },
      { ms: 84_200, sectors: [30_100, 24_100, 30_000] },
      { ms: 84_300, sectors: [30_200, 24_100, 30_000] },
    ];
    const none = [NO_TIME, NO_TIME, NO_TIME];
    const digest = digestOf([aRun(1, laps)]);
    expect([...digest.sectors]).toEqual([...none, ...none, 30_100, 24_100, 30_000, 30_200, 24_100, 30_000]);
  });

  it("stand lap after lap, −1 where a lap has none", () => {
    const laps: Told[] = [{ ms: 84_000, sectors: [30_000, 54_000] }, 84_100];
    const digest = digestOf([aRun(1, laps)]);
    expect(digest.sectorCount).toBe(2);
    expect([...digest.sectors]).toEqual([30_000, 54_000, NO_TIME, NO_TIME]);
  });
});

it("a session without laps is a digest too", () => {
  for (const runs of [[], [aRun(1, [])], [aRun(1, [], { guest: "" })]]) {
    expect(digestOf(runs)).toMatchObject({
      bestClean: undefined,
      drivingMs: 0,
      pace: { laps: 0, median: undefined },
    });
  }
});

it.each(runKinds.filter((kind): kind is RunKind => kind !== "pace"))("a %s run gives no pace", (kind) => {
  expect(digestOf([aRun(1, even(8), { kind })]).pace.laps).toBe(0);
});

it("has no best of ten faster than the best where a lap was taken back as a best", () => {
  const { pace } = digestOf([aRun(1, [...even(11), { ms: 80_000, isNotBest: true }])]);
  expect(pace.best).toBe(84_000);
  expect(pace.bestOfTen).toBeGreaterThanOrEqual(84_000);
});

it("leaves a lap that the driver called not a PB out of the session's best", () => {
  const towed = { ms: 80_000, isNotBest: true } as const;
  const digest = digestOf([aRun(1, [...even(5), towed])]);
  expect(digest.pace.best).toBe(84_000);
  expect(digest.bestClean?.ms).toBe(84_000);
  expect(digest.pace.laps).toBe(6);
});
