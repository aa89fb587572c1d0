import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { known, lapPlaces, unknown } from "#domain";
import {
  sayAgainstRun,
  sayAgainstTarget,
  sayCounts,
  sayMistakes,
  sayPointedAt,
  sayScatter,
  sayTrendInRun,
} from "#words";
import { someCounts } from "./aReport.ts";
import { expectWellFormed } from "./wellFormed.ts";

describe("where the laps went", () => {
  it("names every place in plain words", () =>
    expect(sayCounts(someCounts({ pace: 41, drill: 12, wet: 8, noTime: 3 }))).toBe(
      "of 64 laps: 41 pace, 3 without a time, 8 damp or wet, 12 drill",
    ));

  it("says one lap and no laps", () => {
    expect(sayCounts(someCounts({ pace: 1 }))).toBe("of 1 lap: 1 pace");
    expect(sayCounts(someCounts({}))).toBe("no laps yet");
  });

  it("adds up, whatever the places", () =>
    fc.assert(
      fc.property(
        fc.array(fc.nat(300), { minLength: lapPlaces.length, maxLength: lapPlaces.length }),
        (numbers) => {
          const counts = someCounts(
            Object.fromEntries(lapPlaces.map((place, index) => [place, numbers[index] ?? 0])),
          );
          fc.pre(counts.driven > 0);
          const sentence = sayCounts(counts);
          expectWellFormed(sentence);
          const [whole = 0, ...parts] = (sentence.match(/\d+/g) ?? []).map(Number);
          expect(parts.reduce((sum, part) => sum + part, 0)).toBe(whole);
        },
      ),
      { seed: 3 },
    ));
});

describe("a run's figures", () => {
  it("tells scatter in seconds and percent, or what is missing", () => {
    const scatter = {
      scatterMs: 312,
      lowMs: 240,
      highMs: 470,
      percent: 0.3714,
      lowPercent: 0.28,
      highPercent: 0.56,
      laps: 12,
    };
    expect(sayScatter(known(scatter))).toBe("± 0.31 s · 0.37 %");
    expect(sayScatter(unknown({ needs: 5, of: "pace lap", has: 3 }))).toBe(
      "Not enough pace laps yet: 3 of 5",
    );
  });

  it("tells a drift only where it is clear", () => {
    expect(sayTrendInRun(known({ msPerLap: 21, low: 10, high: 33, laps: 12 }))).toBe(
      "Slower by 0.021 s a lap through the run, very likely at least 0.010 s",
    );
    expect(sayTrendInRun(known({ msPerLap: 4.5, low: -12.25, high: 20.5, laps: 8 }))).toBe(
      "Not clearly faster or slower through the run: between 0.013 s faster and 0.021 s slower a lap, in 8 laps",
    );
    expect(sayTrendInRun(known({ msPerLap: 0, low: 0, high: 0, laps: 8 }))).toBe(
      "The same pace through the run, in 8 laps",
    );
    expect(sayTrendInRun(unknown({ needs: 6, of: "pace lap", has: 1 }))).toBe(
      "Faster or slower through the run: not enough pace laps yet: 1 of 6",
    );
  });

  it("tells the change from the run before with what is ruled out", () => {
    const change = { n: 1, ms: 90, low: -100, high: 300, confidence: 0.9, isClear: false };
    expect(sayAgainstRun(known(change))).toBe(
      "Not clearly faster or slower than run 1: between 0.10 s faster and 0.30 s slower",
    );
    expect(sayAgainstRun(known({ ...change, low: 0, high: 200 }))).toBe(
      "Not clearly faster or slower than run 1: up to 0.20 s slower",
    );
    expect(sayAgainstRun(known({ ...change, ms: -240, low: -430, high: -52, isClear: true }))).toBe(
      "These laps were faster than run 1 by 0.24 s: between 0.05 and 0.43 s faster",
    );
    expect(sayAgainstRun(known({ ...change, ms: 0, low: 0, high: 0 }))).toBe("The same as run 1");
    expect(sayAgainstRun(unknown({ needs: 5, of: "pace lap", has: 2, run: 1 }))).toBe(
      "Against the run before: not enough pace laps yet: 2 of 5 in run 1",
    );
  });

  it("never names one direction where the interval holds zero", () =>
    fc.assert(
      fc.property(fc.integer({ min: -4000, max: 0 }), fc.integer({ min: 0, max: 4000 }), (low, high) => {
        fc.pre(low !== 0 || high !== 0);
        const ms = Math.round((low + high) / 2);
        const sentence = sayAgainstRun(known({ n: 2, ms, low, high, confidence: 0.9, isClear: false }));
        expectWellFormed(sentence);
        expect(sentence).toMatch(/^Not clearly faster or slower than run 2: /);
        expect(sentence).not.toMatch(/very likely/);
        const numbers = [...sentence.matchAll(/([\d.]+) s/g)].map((found) =>
          Math.round(Number(found[1]) * 1000),
        );
        expect(Math.max(0, ...numbers)).toBeGreaterThanOrEqual(Math.max(-low, high));
      }),
      { seed: 5 },
    ));

  it("tells laps at the target and how far the others are", () => {
    const against = {
      targetMs: 84_000,
      best: -212,
      bestDecimals: 3,
      usual: 340,
      usualDecimals: 1,
      reached: 3,
      laps: 8,
    };
    expect(sayAgainstTarget(known(against))).toBe(
      "3 of 8 laps at 1:24.000 or under; best −0.212 s, usual +0.3 s",
    );
    expect(sayAgainstTarget(known({ ...against, usual: undefined, reached: 0, laps: 0, best: 0 }))).toBe(
      "Best ±0.000 s",
    );
    expect(sayAgainstTarget(known({ ...against, best: 200, bestDecimals: 1, usual: undefined }))).toBe(
      "3 of 8 laps at 1:24.000 or under; best +0.2 s",
    );
    expect(sayAgainstTarget(unknown({ because: "no target" }))).toBe("No target for this session");
  });

  it("counts mistakes", () => {
    expect(sayMistakes({ mistakes: 0, counts: someCounts({ pace: 8 }) })).toBe("No mistakes in 8 laps");
    expect(sayMistakes({ mistakes: 1, counts: someCounts({ mistake: 1 }) })).toBe("1 mistake in 1 lap");
  });

  it("points at laps and says how often chance does", () => {
    expect(sayPointedAt([], 20)).toBe("");
    const one = { lapId: "a", number: 7, reasons: ["far out", "outside the limits"] } as const;
    expect(sayPointedAt([one], 20)).toBe(
      "Worth a second look: lap 7 (far out, outside the limits). By chance alone 6 of 20 runs this long have one.",
    );
    expect(sayPointedAt([one], 8)).toMatch(/ 3 of 20 runs this long have one\.$/);
    expect(sayPointedAt([one], 300)).toMatch(/ more than 19 of 20 runs this long have one\.$/);
    expect(
      sayPointedAt(
        [
          { lapId: "a", number: 8, reasons: ["eight in a row on one side"] },
          { lapId: "b", number: 9, reasons: ["far out"] },
        ],
        20,
      ),
    ).toContain("lap 8 (at the end of eight on one side of the mean) and lap 9 (far out)");
  });
});
