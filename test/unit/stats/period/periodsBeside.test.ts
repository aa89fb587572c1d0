import { describe, expect, it } from "vitest";
import { type ComboReviewInput, comboReview, isClearShift, periodShift, type SessionDigest } from "#stats";
import { comparable } from "../../../../src/stats/period/comparable.ts";
import { periodFigures } from "../../../../src/stats/period/periodFigures.ts";
import { aPage, aRun, aSession, choices, type Told } from "../someRows.ts";
import { aDigest, aDigestOf } from "./manySessions.ts";

const five = (ms: number): Told[] => [0, 300, 100, 200, 0].map((more) => ms + more);
const perSession = { needs: 5, of: "session", each: { needs: 5, of: "pace lap" } };

describe("a shift between two periods", () => {
  it("by hand: sessions ten faster each", () => {
    const before = [101, 102, 103, 104, 105];
    const now = before.map((ms) => ms - 10);
    expect(periodShift(now, before)).toMatchObject({
      known: true,
      value: { estimate: -10, sessions: 5, sessionsBefore: 5 },
    });
    expect(periodShift([...now, 93], before)).toMatchObject({ value: { sessions: 6, sessionsBefore: 5 } });
  });

  it("needs five sessions on either side, and says on which they lack", () => {
    const enough = [1, 2, 3, 4, 5];
    expect(periodShift([1, 2, 3, 4], enough)).toEqual({ known: false, reason: { ...perSession, has: 4 } });
    expect(periodShift(enough, [1, 2])).toEqual({
      known: false,
      reason: { ...perSession, has: 2, period: "before" },
    });
  });

  it("is clear where its interval leaves out zero", () => {
    const intervals = [
      [1, 5],
      [-5, -1],
      [-1, 1],
      [0, 5],
      [-5, 0],
    ] as const;
    expect(intervals.map(([low, high]) => isClearShift({ low, high }))).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
  });
});

describe("whether two periods compare", () => {
  it("asks for five sessions of five pace laps on either side", () => {
    const sessions = (count: number) => Array.from({ length: count }, (_, day) => aDigest(day, five(84_000)));
    const short = aDigest(30, [84_000, 84_000, 84_000, 84_000]);
    expect(comparable(sessions(5), sessions(6))).toEqual({
      known: true,
      value: { sessions: 5, sessionsBefore: 6 },
    });
    expect(comparable([...sessions(4), short], sessions(6))).toEqual({
      known: false,
      reason: { ...perSession, has: 4 },
    });
    expect(comparable(sessions(6), [...sessions(4), short])).toEqual({
      known: false,
      reason: { ...perSession, has: 4, period: "before" },
    });
  });
});

describe("the figures of a period", () => {
  it("are the sums of its sessions, by hand", () => {
    const digests = [
      aDigestOf(0, [aRun(1, [...five(84_000), [90_000, "off"]]), aRun(2, [70_000], { guest: "Ida" })]),
      aDigest(1, [...five(84_000), [undefined, "spin"], [95_000, "out"]]),
    ];
    const elsewhere = aDigest(2, [60_000]);
    const found = periodFigures(digests, [...digests, elsewhere], 0.12);
    expect(found).toMatchObject({
      sessions: 2,
      guestLaps: 1,
      mistakes: 2,
      // Ten laps of 842.2 s in all, an off, an out lap, and the usual 84.1 s for the lap without a time.
      drivingMs: 2 * 420_600 + 90_000 + 95_000 + 84_100,
      counts: { pace: 10, driven: 13 },
      practice: { sessions: 3, laps: 14 },
    });
    expect(found.cleanShare?.share).toBeCloseTo(10 / 11, 12);
    expect(found.mistakeShare?.share).toBeCloseTo(2 / 13, 12);
    // Within 0.12 % of 84 s, 100.8 ms: the two best of each session and the lap 100 ms slower.
    expect(found.nearTheBest).toMatchObject({ within: 6, laps: 10 });
  });

  it("know no more mistakes than laps, and no shares of nothing", () => {
    const many = aDigest(0, [], { summary: { laps: 3, off: 5 } });
    expect(periodFigures([many], [many], 0.5)).toMatchObject({ mistakes: 5, mistakeShare: { share: 1 } });
    expect(periodFigures([], [], 0.5)).toMatchObject({ cleanShare: undefined, mistakeShare: undefined });
  });
});

describe("the review of a combo", () => {
  const review = (digests: readonly SessionDigest[], input: Partial<ComboReviewInput> = {}) =>
    comboReview({
      comboId: "combo",
      digests,
      pages: [],
      period: {},
      today: "2026-01-31",
      targets: [],
      references: [],
      preferences: choices,
      curve: { known: false, reason: { because: "no figure yet" } },
      ...input,
    });

  it("has of each session what its point shows", () => {
    const digest = aDigest(0, [...five(84_000), [90_000, "off"]]);
    const [point] = review([digest]).points;
    expect(point).toEqual({
      sessionId: "session 0",
      date: "2026-01-01",
      startedAt: aSession(0).startedAt,
      isPresentPage: true,
      laps: 6,
      paceLaps: 5,
      mistakes: 1,
      drivingMs: 510_600,
      median: 84_100,
      medianDecimals: 3,
      lowerQuartile: 84_000,
      upperQuartile: 84_200,
      best: 84_000,
      bestDecimals: 3,
      bestClean: expect.objectContaining({ ms: 84_000, decimals: 3 }),
      bestOfTen: undefined,
      consistency: {
        // Between neighbours 300, 200, 100 and 200 ms: the root of 180,000/8.
        percent: expect.closeTo((100 * 150) / 84_100, 9),
        low: expect.any(Number),
        high: expect.any(Number),
      },
    });
    const { percent = 0, low = 1, high = 0 } = point?.consistency ?? {};
    expect(low).toBeLessThan(percent);
    expect(high).toBeGreaterThan(percent);
    expect(review([aDigest(0, [84_000])]).points[0]?.consistency).toBeUndefined();
  });

  it("lists a session without a lap, counts its guest's laps, and takes it for none of the driver's", () => {
    const guest = aDigest(4, [70_000, 70_000], { guest: "Ida" });
    const found = review([aDigest(0, five(84_000)), guest, aDigest(2, [])]);
    expect(found.points.map(({ date }) => date)).toEqual(["2026-01-01", "2026-01-03", "2026-01-05"]);
    expect(found).toMatchObject({ sessions: 1, guestLaps: 2, daysSinceLast: 30 });
  });

  it("compares with the days before that are as many, up to today where the period is open", () => {
    const digests = [1, 2, 3, 4, 5, 6, 7, 8].map((day) => aDigest(day, [84_000 + day]));
    const sessionsOf = (period: ComboReviewInput["period"], today = "2026-01-31") => {
      const found = review(digests, { period, today });
      return [found.sessions, found.before.sessions];
    };
    expect(sessionsOf({ from: "2026-01-06", to: "2026-01-08" })).toEqual([3, 3]);
    expect(sessionsOf({ from: "2026-01-06", to: "2026-01-07" })).toEqual([2, 2]);
    expect(sessionsOf({ from: "2026-01-07" }, "2026-01-09")).toEqual([3, 3]);
    expect(sessionsOf({ to: "2026-01-04" })).toEqual([3, 0]);
    expect(sessionsOf({})).toEqual([8, 0]);
  });

  it("compares two periods of five sessions, in their medians, scatter and laps", () => {
    const swing = (day: number, level: number, by: number) =>
      aDigest(
        day,
        [0, by, 0, by, 0].map((ms) => level + ms),
      );
    const digests = [0, 1, 2, 3, 4].flatMap((day) => [
      swing(day, 85_000 + day, 400),
      swing(day + 5, 84_000 + day, 100),
    ]);
    const found = review(digests, { period: { from: "2026-01-06", to: "2026-01-10" } });
    expect(found.against).toEqual({ known: true, value: { sessions: 5, sessionsBefore: 5 } });
    expect(found.shift).toMatchObject({ known: true, value: { estimate: -1000 } });
    expect(found.scatterShift.known && found.scatterShift.value.estimate).toBeCloseTo(
      (100 * 100) / Math.SQRT2 / 84_002 - (100 * 400) / Math.SQRT2 / 85_002,
      3,
    );
    expect(found.accountChange.known).toBe(true);
    expect(found.distribution.before?.laps).toBe(25);
    expect(found.distribution.now?.laps).toBe(25);
  });

  it("of old pages has the points and the breaks, and nothing else", () => {
    const digests = [aDigest(0, five(80_000)), aDigest(12, five(84_000)), aDigest(13, five(84_000))];
    const guest = aDigest(1, [70_000], { guest: "Ida" });
    const found = review([...digests, guest], {
      pages: [aPage(aSession(12).startedAt)],
      period: { from: "2026-01-01", to: "2026-01-31" },
    });
    expect(found).toMatchObject({ sessions: 2, sessionsOnOldPages: 1, guestLaps: 0 });
    expect(found.sessionBests.map(({ ms }) => ms)).toEqual([84_000, 84_000]);
    expect(found.practice.sessions).toBe(3);
    expect(found.breaks).toMatchObject([{ from: "2026-01-01", to: "2026-01-13", isCompared: false }]);
  });

  it("has the breaks that ended in the period", () => {
    const digests = [0, 20, 40].map((day) => aDigest(day, five(84_000)));
    const found = review(digests, { period: { from: "2026-02-01" }, today: "2026-02-20" });
    expect(found.breaks.map(({ to }) => to)).toEqual(["2026-02-10"]);
  });

  it("has sectors, the sum of the best and the lap that is within reach", () => {
    const lap = (first: number): Told => ({ ms: first + 54_000, sectors: [first, 54_000] });
    const laps = [30_000, 30_100, 30_200, 30_300, 30_400, 30_500, 30_600, 30_700, 30_800].map(lap);
    const found = review([aDigest(0, [...laps, [83_000, "cut"]])]);
    expect(found.bestSectors).toMatchObject({ known: true, value: { ms: 84_000 } });
    expect(found.reachable).toMatchObject({ known: true, value: { ms: 84_200 } });
    expect(found.sectors.known).toBe(true);
  });

  it("tells laps apart by what they were driven with, each by the level of its session", () => {
    const digests = [0, 1, 2, 3, 4, 5, 6, 7].map((day) =>
      aDigest(day, five(84_000 - 100 * day), { tyres: day % 2 === 0 ? "hard" : "soft" }),
    );
    const line = digests.map(({ sessionId, pace }) => ({ sessionId, mid: pace.median }));
    const tyresOf = (curve: ComboReviewInput["curve"]) =>
      review(digests, { curve }).factors.find(({ factor }) => factor === "tyres")?.groups[1]?.difference;
    const known = { known: true, value: { line } } as unknown as NonNullable<ComboReviewInput["curve"]>;
    // Measured against its own level no session differs; without a level the soft ones were driven later.
    expect(tyresOf(known)).toMatchObject({ known: true, value: { estimate: 0 } });
    const without = tyresOf({ known: false, reason: { because: "no figure yet" } });
    expect(without?.known && without.value.estimate).toBe(-100);
    // A session that is not on the curve stands at its last level.
    const short = { known: true, value: { line: line.slice(0, 7) } } as unknown as typeof known;
    const found = tyresOf(short);
    expect(found?.known && found.value.low).toBe(-100);
  });

  it("draws the curve itself where it is not handed in", () => {
    const digests = [aDigest(0, five(84_000)), aDigest(3, five(83_900))];
    const found = review(digests, { curve: undefined });
    expect(found.curve.known && found.curve.value.line).toHaveLength(2);
    expect(found.history.map(({ lapsBefore }) => lapsBefore)).toEqual([0, 5]);
  });
});
