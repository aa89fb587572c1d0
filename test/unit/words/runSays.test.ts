import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { known, unknown } from "#domain";
import type { RunFinding } from "#stats";
import { sayRun } from "#words";
import { aReport } from "./aReport.ts";
import { expectWellFormed } from "./wellFormed.ts";

const said = (finding: RunFinding, fields = {}) => sayRun(aReport(finding, fields));

describe("what a run says", () => {
  it.each<[RunFinding, string]>([
    [{ kind: "guest" }, "Someone else drove: this run counts in no figure of yours."],
    [{ kind: "no times", driven: 0 }, "No laps yet."],
    [{ kind: "no times", driven: 1 }, "No clean lap with a time in 1 lap."],
    [{ kind: "first best", ms: 83_704, decimals: 3, first: undefined }, "1:23.704 is your first PB here."],
    [
      { kind: "first best", ms: 83_700, decimals: 1, first: undefined },
      "About 1:23.7 is your first PB here.",
    ],
    [
      { kind: "first best", ms: 85_740, decimals: 3, first: { ms: 85_812, decimals: 3 } },
      "1:25.740 is your PB here, 0.072 s faster than the first, 1:25.812.",
    ],
    [
      { kind: "new best", ms: 83_704, decimals: 3, pbMs: 84_017, pbDecimals: 3 },
      "1:23.704 is a new PB, 0.313 s faster than the old one.",
    ],
    [
      { kind: "new best", ms: 83_704, decimals: 3, pbMs: 84_017, pbDecimals: 3, reachedMs: 83_750 },
      "1:23.704 is a new PB, 0.313 s faster than the old one. It reaches your target of 1:23.750.",
    ],
    [
      { kind: "first best", ms: 83_704, decimals: 3, first: undefined, reachedMs: 84_000 },
      "1:23.704 is your first PB here. It reaches your target of 1:24.000.",
    ],
    [
      { kind: "new best", ms: 83_700, decimals: 1, pbMs: 84_013, pbDecimals: 3 },
      "About 1:23.7 is a new PB, at least 0.2 s faster than the old one.",
    ],
    [
      { kind: "new best", ms: 83_650, decimals: 3, pbMs: 83_700, pbDecimals: 1 },
      "1:23.650 is a new PB, just faster than the old one.",
    ],
    [
      { kind: "level with best", ms: 83_400, decimals: 1, pbMs: 83_456 },
      "About 1:23.4 is the same as your PB, as far as its digits tell.",
    ],
    [{ kind: "level with best", ms: 83_456, decimals: 3, pbMs: 83_456 }, "1:23.456 is the same as your PB."],
    [
      { kind: "mistakes", mistakes: 6, flyingLaps: 8 },
      "6 of 8 laps were lost or had a mistake: make the next run slower and clean.",
    ],
    [
      { kind: "mistakes", mistakes: 5, flyingLaps: 4 },
      "5 mistakes in 4 laps: make the next run slower and clean.",
    ],
    [
      { kind: "target reached", reached: 6, laps: 8, targetMs: 84_000 },
      "Your usual lap reached the target of 1:24.000, with 6 of 8 laps at it or under.",
    ],
    [
      { kind: "target reached", reached: 0, laps: 0, targetMs: 84_000 },
      "Your usual lap reached the target of 1:24.000.",
    ],
    [
      { kind: "against run before", n: 1, ms: -240, low: -430, high: -52 },
      "These laps were faster than run 1 by 0.24 s.",
    ],
    [
      { kind: "against run before", n: 3, ms: 8, low: 3, high: 20 },
      "These laps were slower than run 3 by 0.01 s.",
    ],
    [
      { kind: "drift", msPerLap: 21, low: 10, high: 33, laps: 12 },
      "Slower by 0.021 s a lap through the run, very likely at least 0.010 s.",
    ],
    [
      { kind: "spread", scatterMs: 312, percent: 0.371, laps: 12 },
      "Laps differ by about 0.31 s, in 12 laps.",
    ],
    [{ kind: "few", laps: 3, bestMs: 84_100, decimals: 3 }, "Best 1:24.100. Two more laps for a verdict."],
    [
      { kind: "few", laps: 1, bestMs: 84_100, decimals: 2 },
      "Best about 1:24.10. Four more laps for a verdict.",
    ],
    [{ kind: "few", laps: 0, bestMs: 84_100, decimals: 3 }, "Best 1:24.100; write laps down to see more."],
  ])("%o", (finding, sentence) => {
    expect(said(finding)).toBe(sentence);
    expectWellFormed(sentence);
  });

  it("tells the scatter beside no clear change from the run before", () =>
    expect(
      said(
        { kind: "spread", scatterMs: 312, percent: 0.371, laps: 12 },
        { againstRunBefore: known({ n: 2, ms: 10, low: -90, high: 120, confidence: 0.9, isClear: false }) },
      ),
    ).toBe("Not clearly faster or slower than run 2; laps differ by about 0.31 s, in 12 laps."));

  it("calls runs whose laps do not differ the same", () =>
    expect(
      said(
        { kind: "spread", scatterMs: 312, percent: 0.371, laps: 12 },
        { againstRunBefore: known({ n: 2, ms: 0, low: 0, high: 0, confidence: 0.9, isClear: false }) },
      ),
    ).toBe("The same as run 2; laps differ by about 0.31 s, in 12 laps."));

  it("promises no verdict to a run that is compared with no other", () =>
    expect(
      said(
        { kind: "few", laps: 2, bestMs: 84_100, decimals: 3 },
        { againstRunBefore: unknown({ because: "not compared", run: "warmUp" }) },
      ),
    ).toBe("Best 1:24.100 of 2 laps. Warm-up laps are not compared."));

  it("does not count a single lap", () =>
    expect(
      said(
        { kind: "few", laps: 1, bestMs: 84_100, decimals: 3 },
        { againstRunBefore: unknown({ because: "not compared", run: "drill" }) },
      ),
    ).toBe("Best 1:24.100. Laps of a drill are not compared."));

  it("says why there is no spread where the laps are enough and their digits are not", () =>
    expect(
      said(
        { kind: "few", laps: 6, bestMs: 84_100, decimals: 1 },
        { scatter: unknown({ needs: 5, of: "pace lap", has: 0 }) },
      ),
    ).toBe("Best about 1:24.1 of 6 laps. Not enough pace laps yet: 0 of 5."));
});

describe("a change from the run before", () => {
  const changes = fc
    .tuple(
      fc.integer({ min: 1, max: 9_000 }),
      fc.integer({ min: 0, max: 5_000 }),
      fc.integer({ min: 0, max: 5_000 }),
    )
    .chain(([near, more, most]) =>
      fc.boolean().map((isFaster) => {
        const sign = isFaster ? -1 : 1;
        const ends = [sign * near, sign * (near + more + most)].sort((a, b) => a - b);
        return { ms: sign * (near + more), low: ends[0] as number, high: ends[1] as number };
      }),
    );

  it("has the sign of its figures, tells their size, and claims no certainty from laps alone", () =>
    fc.assert(
      fc.property(changes, fc.integer({ min: 1, max: 20 }), (change, n) => {
        const sentence = said({ kind: "against run before", n, ...change });
        expectWellFormed(sentence);
        const way = change.high < 0 ? "faster" : "slower";
        expect(sentence.startsWith(`These laps were ${way} than run ${n} by `)).toBe(true);
        expect(sentence).not.toMatch(/likely|chance/);
        const size = Number(/by (?:less than )?([\d.]+) s\.$/.exec(sentence)?.[1]) * 1000;
        expect(Math.abs(size - Math.abs(change.ms))).toBeLessThanOrEqual(10);
      }),
      { seed: 7 },
    ));
});

describe("a new PB", () => {
  it("is never said to beat the old one by more than is sure", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 60_000, max: 120_000 }),
        fc.integer({ min: 0, max: 3 }),
        fc.integer({ min: 1, max: 4_000 }),
        (whole, decimals, margin) => {
          const unit = 10 ** (3 - decimals);
          const ms = Math.floor(whole / unit) * unit;
          const pbMs = ms + margin + unit - 1;
          const sentence = said({ kind: "new best", ms, decimals, pbMs, pbDecimals: 3 });
          expectWellFormed(sentence);
          const gain = /([\d.]+) s faster/.exec(sentence)?.[1];
          expect(Math.round(Number(gain ?? 0) * 1000)).toBe(Math.floor(margin / unit) * unit);
        },
      ),
      { seed: 7 },
    ));
});
