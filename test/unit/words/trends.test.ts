import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { known, unknown } from "#domain";
import type { SessionPoint, SessionTrend } from "#stats";
import { progressBy100Laps, progressReading, steadinessReading, steadinessTitle } from "#words";
import { hundredths } from "../../../src/words/amount.ts";
import { daysOfPage } from "../../../src/words/progress.ts";
import { pace } from "../../../src/words/shift.ts";
import { trendBy100Laps, trendReading, trendTitle } from "../../../src/words/trendSays.ts";
import { expectWellFormed } from "./wellFormed.ts";

function aPoint(date: string, fields: Partial<SessionPoint> = {}): SessionPoint {
  return {
    sessionId: date,
    date,
    startedAt: Date.parse(date),
    isPresentPage: true,
    laps: 20,
    paceLaps: 15,
    mistakes: 1,
    drivingMs: 1_700_000,
    medianDecimals: 3,
    median: 84_000,
    lowerQuartile: 83_800,
    upperQuartile: 84_300,
    best: 83_500,
    bestDecimals: 3,
    bestClean: { ms: 83_500, decimals: 3 },
    bestOfTen: 83_600,
    consistency: undefined,
    ...fields,
  };
}

const twelveWeeks = [
  aPoint("2026-01-05", { isPresentPage: false }),
  aPoint("2026-08-03"),
  aPoint("2026-09-01"),
  aPoint("2026-10-26"),
  aPoint("2026-11-20", { median: undefined }),
];

function aTrend(fields: Partial<SessionTrend>): SessionTrend {
  return {
    sessions: 9,
    p: 0.4,
    tau: -0.1,
    finding: "no clear change",
    perWeek: { slope: 10, low: -60, high: 98 },
    per100Laps: { slope: 20, low: -100, high: 160 },
    change: 420,
    moreSessions: 9,
    ...fields,
  };
}

const progress = (fields: Partial<SessionTrend>, points = twelveWeeks) => {
  const told = { words: { ...pace, unit: hundredths }, days: daysOfPage(points) };
  const trend = aTrend(fields);
  return [trendTitle(trend, told), trendReading(trend, told)];
};

const falling = { finding: "falling", perWeek: { slope: -35, low: -60, high: -17 } } as const;

describe("the words of a trend", () => {
  it("say that there is none so far, and when one would show, where there is no clear change", () =>
    expect(progress({})).toEqual([
      "Not getting faster or slower so far",
      "From 9 sessions in 12 weeks: between 0.06 s faster and 0.10 s slower a week. A change of 0.42 s would show in about 3 months at this rate, with 9 more sessions.",
    ]));

  it("say how much faster over the weeks, and how much of it is sure", () =>
    expect(progress({ ...falling, per100Laps: { slope: -70, low: -120, high: -34 } })).toEqual([
      "Faster by 0.42 s in 12 weeks, very likely at least 0.20 s",
      "From 9 sessions in 12 weeks: between 0.01 and 0.06 s faster a week. Good and bad evenings come in streaks, which can look like this.",
    ]));

  it("call a direction that the test did not find a matter of chance", () =>
    expect(progress({ perWeek: { slope: -30, low: -60, high: -4 }, moreSessions: 1 })).toEqual([
      "Not getting faster or slower so far",
      "From 9 sessions in 12 weeks: up to 0.06 s faster a week, may be chance. A change of 0.42 s would show in about 11 days at this rate, with 1 more session.",
    ]));

  it("find no difference where all sessions are alike, and put nothing down to chance", () => {
    const same = { slope: 0, low: 0, high: 0 };
    const [title, reading = ""] = progress({ perWeek: same, per100Laps: same, change: 0 });
    expect(title).toBe("No change in 12 weeks: the same all along");
    expect(reading).toBe("From 9 sessions in 12 weeks: no difference.");
    expect(trendBy100Laps(aTrend({ per100Laps: same }), { ...pace, unit: hundredths })).toBe(
      "A hundred laps: no difference.",
    );
  });

  it("say when the sessions are enough, or never will be", () => {
    expect(progress({ moreSessions: 0 })[1]).toContain(
      " A change of 0.42 s should show by now: 16 chances in 20.",
    );
    expect(progress({ moreSessions: undefined })[1]).toContain(
      " A change of 0.42 s would not show for years at this rate.",
    );
    expect(progress({ moreSessions: 110 })[1]).toContain("would not show for years at this rate.");
    expect(progress({ moreSessions: 5 })[1]).toContain("would show in about 8 weeks at this rate");
    expect(progress({ change: 0, moreSessions: undefined })[1]).toBe(
      "From 9 sessions in 12 weeks: between 0.06 s faster and 0.10 s slower a week.",
    );
  });

  it("tell a straight line only where the level went the same way", () => {
    const trend = known(aTrend({ ...falling, per100Laps: { slope: -70, low: -120, high: -34 } }));
    const reading = (change: number, chanceFaster: number) => {
      const gain = known({
        change,
        low: -900,
        high: 100,
        chanceFaster,
        from: "2026-09-01",
        to: "2026-11-01",
        sessions: 9,
      });
      const curve = unknown({ needs: 4, of: "session", has: 3 });
      return `${progressReading({ gain, trend, curve })} ${progressBy100Laps({ gain, trend })}`;
    };
    expect(reading(-400, 0.99)).toMatch(
      /About 0\.04 s a week faster.* A hundred laps: between 0\.03 and 0\.12 s faster\.$/,
    );
    expect(reading(-400, 0.91)).toMatch(/a week faster/);
    for (const [change, chance] of [
      [-400, 0.8],
      [400, 0.02],
    ] as const)
      expect(reading(change, chance)).not.toMatch(/week|hundred/);
  });

  it("tell days under two weeks", () =>
    expect(progress({}, [aPoint("2026-10-01"), aPoint("2026-10-10")])[1]).toMatch(
      /^From 9 sessions in 9 days: /,
    ));
});

describe("the consistency chart's words", () => {
  it("say steadier, in percent of a lap", () => {
    const perWeek = { slope: -0.01, low: -0.02, high: -0.004 };
    const review = {
      steadiness: known(aTrend({ finding: "falling", perWeek, per100Laps: undefined })),
      points: twelveWeeks,
    };
    expect(steadinessTitle(review)).toBe(
      "Steadier by 0.12 % of a lap in 12 weeks, very likely at least 0.04 % of a lap",
    );
    expect(steadinessReading(review)).toBe(
      "From 9 sessions in 12 weeks: up to 0.02 % of a lap steadier a week. Good and bad evenings come in streaks, which can look like this.",
    );
  });

  it("rule out what they can", () => {
    const perWeek = { slope: 0.001, low: -0.012, high: 0.018 };
    const review = {
      steadiness: known(aTrend({ perWeek, change: 0.1, moreSessions: 30 })),
      points: twelveWeeks,
    };
    expect(steadinessTitle(review)).toBe("Not getting steadier or less steady so far");
    expect(steadinessReading(review)).toBe(
      "From 9 sessions in 12 weeks: between 0.02 % of a lap steadier and 0.02 % of a lap less steady a week. A change of 0.10 % of a lap would show in about 10 months at this rate, with 30 more sessions.",
    );
  });
});

describe("any trend", () => {
  const slopes = fc
    .tuple(
      fc.double({ min: -900, max: 900, noNaN: true }),
      fc.double({ min: 0, max: 400, noNaN: true }),
      fc.double({ min: 0, max: 400, noNaN: true }),
    )
    .map(([slope, below, above]) => ({ slope, low: slope - below, high: slope + above }));
  const trends = fc
    .record({
      perWeek: slopes,
      per100Laps: fc.option(slopes, { nil: undefined }),
      isFound: fc.boolean(),
      moreSessions: fc.option(fc.nat(500), { nil: undefined }),
      sessions: fc.integer({ min: 5, max: 300 }),
    })
    .map(({ perWeek, per100Laps, isFound, ...rest }): SessionTrend => {
      const isClear = isFound && (perWeek.low > 0 || perWeek.high < 0);
      return aTrend({
        ...rest,
        perWeek,
        per100Laps,
        finding: !isClear ? "no clear change" : perWeek.high < 0 ? "falling" : "rising",
      });
    });

  it("claims a direction only where it was found, and tells the whole interval", () =>
    fc.assert(
      fc.property(trends, fc.integer({ min: 1, max: 400 }), (trend, days) => {
        const points = [
          aPoint("2026-01-01"),
          { ...aPoint("2026-01-01"), date: new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 10) },
        ];
        const told = { words: { ...pace, unit: hundredths }, days: daysOfPage(points) };
        const [title, reading] = [trendTitle(trend, told), trendReading(trend, told)];
        expectWellFormed(title);
        expectWellFormed(reading);
        const { low, high } = trend.perWeek;
        fc.pre(low !== 0 || high !== 0);
        if (trend.finding !== "no clear change") {
          expect(title).toContain(trend.finding === "falling" ? "Faster by" : "Slower by");
          const least = Number(/very likely at least ([\d.]+)/.exec(title)?.[1] ?? 0) * 1000;
          const near = (Math.min(Math.abs(low), Math.abs(high)) * days) / 7;
          expect(least).toBeLessThanOrEqual(near + 1e-3);
          return;
        }
        expect(title).toBe("Not getting faster or slower so far");
        const ends = [...reading.matchAll(/([\d.]+)(?: s)? (?:faster|slower|and)/g)].map(
          ([, size]) => Number(size) * 1000,
        );
        expect(Math.max(...ends)).toBeGreaterThanOrEqual(Math.max(-low, high) - 1e-3);
        if (low >= 0 || high <= 0) expect(reading).toContain("may be chance");
        else if (low < 0 && high > 0) expect(reading).toMatch(/between .* faster and .* slower a week\./);
      }),
      { seed: 11 },
    ));
});
