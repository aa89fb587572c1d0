import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DatedBest, wilsonInterval } from "#stats";
import {
  personalBestReading,
  personalBestTitle,
  sayCleanShare,
  sayMistakeShare,
  sayNearTheBest,
} from "#words";
import { expectWellFormed } from "./wellFormed.ts";

describe("shares", () => {
  it("stand with their interval, rounded outwards", () => {
    expect(sayCleanShare({ share: 0.777, low: 0.7021, high: 0.8402 })).toBe(
      "78 % of timed laps clean, between 70 and 85 %",
    );
    expect(sayMistakeShare({ share: 0.012, low: 0.001, high: 0.05 })).toBe(
      "1 mistake in 100 laps, between 0 and 5",
    );
    expect(sayNearTheBest({ share: 0.29, low: 0.2, high: 0.4, within: 12, laps: 41 }, 0.5)).toBe(
      "12 of 41 pace laps within 0.5 % of the best of their session",
    );
  });

  it("say what is missing", () => {
    expect(sayCleanShare(undefined)).toBe("No timed laps yet");
    expect(sayMistakeShare(undefined)).toBe("No laps yet");
    expect(sayNearTheBest(undefined, 0.5)).toBe("No session with 5 pace laps yet");
  });

  it("lie inside the interval told", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (trials, part) => {
          const sentence = sayCleanShare(wilsonInterval(Math.floor(trials * part), trials, 0.9));
          expectWellFormed(sentence);
          const [share = 0, low = 0, high = 0] = (sentence.match(/\d+/g) ?? []).map(Number);
          expect(share).toBeGreaterThanOrEqual(low);
          expect(share).toBeLessThanOrEqual(high);
          expect(high).toBeLessThanOrEqual(100);
        },
      ),
      { seed: 9 },
    ));
});

describe("the personal best", () => {
  const step = (ms: number, date: string, decimals = 3): DatedBest => ({
    lapId: date,
    runId: "run",
    kind: "pace",
    isSummary: false,
    at: Date.parse(date),
    ms,
    decimals,
    sessionId: "session",
    date,
  });

  it("is told with its day and the first one", () => {
    const bests = [step(84_908, "2026-08-03"), step(83_704, "2026-10-14")];
    expect(personalBestTitle(bests)).toBe(
      "PB 1:23.704 since Wed 14 Oct 2026, 1.204 s faster than the first one, of Mon 3 Aug 2026",
    );
    expect(personalBestReading(bests)).toBe(
      "2 steps since Mon 3 Aug 2026. More laps alone make a best lap faster: the best of ten compares sessions fairly.",
    );
  });

  it("is about as much where digits are not known", () => {
    expect(personalBestTitle([step(84_900, "2026-08-03", 1), step(83_704, "2026-10-14")])).toContain(
      ", about 1.2 s faster than the first one, of Mon 3 Aug 2026",
    );
    expect(personalBestTitle([step(84_900, "2026-08-03", 1)])).toBe("PB about 1:24.9 since Mon 3 Aug 2026");
    expect(personalBestTitle([])).toBe("No PB yet");
    expectWellFormed(personalBestReading([]));
  });
});
