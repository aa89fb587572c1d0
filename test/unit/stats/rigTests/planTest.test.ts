import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { differenceFound, pairsNeeded, planTest, sessionDigest, testBasis, testSize } from "#stats";
import { aRun, aSession, choices } from "../someRows.ts";

const evening = { lapsARun: 6, runsAnEvening: 4 };

describe("a plan", () => {
  it("is told as pairs, runs, laps, evenings and minutes", () => {
    expect(planTest({ spread: 240, smallestMs: 250, ...evening, usualMs: 90_000 })).toMatchObject({
      pairs: 8,
      runs: 16,
      laps: 96,
      evenings: 4,
      minutes: 144,
      level: 0.1,
      power: 0.8,
      verdict: { isWorth: true },
    });
    expect(planTest({ spread: 240, smallestMs: 250, ...evening })).not.toHaveProperty("minutes");
  });

  it("has whole pairs on each evening, one at least", () => {
    const evenings = (runsAnEvening: number) =>
      planTest({ spread: 240, smallestMs: 250, lapsARun: 6, runsAnEvening }).evenings;
    expect([1, 2, 3, 5, 6, 16].map(evenings)).toEqual([8, 8, 8, 4, 3, 1]);
  });

  it("is not worth testing over 24 pairs, and says what these would find", () => {
    // The published example for 150 ms at 250 ms has 20 pairs; for 130 ms there are 26.
    const { pairs, verdict } = planTest({ spread: 250, smallestMs: 130, ...evening });
    expect(pairs).toBe(26);
    expect(verdict).toMatchObject({
      isWorth: false,
      tooMany: "pairs",
      most: 24,
      instead: { pairs: 20, evenings: 10 },
    });
    const many = planTest({ spread: 250, smallestMs: 130, lapsARun: 6, runsAnEvening: 12 });
    expect(many.verdict).toMatchObject({
      isWorth: false,
      tooMany: "pairs",
      most: 24,
      instead: { pairs: 24 },
    });
    if (many.verdict.isWorth) return;
    expect(many.verdict.instead.foundMs).toBeGreaterThan(130);
    expect(many.verdict.instead.foundMs).toBeLessThan(150);
  });

  it("is not worth testing over ten evenings", () => {
    const twice = { spread: 250, lapsARun: 6, runsAnEvening: 2 };
    expect(planTest({ ...twice, smallestMs: 215 })).toMatchObject({ pairs: 11, evenings: 11 });
    expect(planTest({ ...twice, smallestMs: 215 }).verdict).toMatchObject({
      isWorth: false,
      tooMany: "evenings",
      most: 10,
      instead: { pairs: 10, evenings: 10 },
    });
    expect(planTest({ ...twice, smallestMs: 230 })).toMatchObject({ pairs: 10, verdict: { isWorth: true } });
  });

  it("of too few pairs finds nothing", () => {
    expect(testSize({ spread: 250, ...evening }, 5)).not.toHaveProperty("foundMs");
    expect(testSize({ spread: 250, ...evening }, 6).foundMs).toBeGreaterThan(250);
  });

  it("read backwards gives the difference that asks for just so many pairs", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 6, max: 60 }),
        fc.double({ min: 20, max: 900, noNaN: true }),
        fc.constantFrom(0.8, 0.9),
        (pairs, standardDeviation, power) => {
          const plan = { standardDeviation, power, level: 0.1 };
          const found = differenceFound({ ...plan, pairs }) as number;
          expect(pairsNeeded({ ...plan, difference: found * 1.0001 })).toBe(pairs);
          expect(pairsNeeded({ ...plan, difference: found * 0.9999 })).toBe(pairs + 1);
        },
      ),
    );
  });
});

describe("what a plan is made from", () => {
  /** An evening of runs of so many laps at levels, laps 30 ms apart. */
  const driven = (day: number, levels: readonly number[], many = 6) =>
    sessionDigest(
      aSession(day),
      levels.map((level, n) =>
        aRun(
          n + 1,
          Array.from({ length: many }, (_, lap) => level + 30 * (lap % 2)),
          { sessionId: aSession(day).id },
        ),
      ),
      choices,
    );
  const basisOf = (digests: ReturnType<typeof driven>[], today = aSession(40).date) =>
    testBasis({ page: digests, driven: digests, today });

  it("is the driver's own runs of the last twelve weeks", () => {
    const lately = [30, 32, 34].map((day) => driven(day, [84_000, 84_200, 84_000, 84_200]));
    const basis = basisOf([...lately, driven(36, [84_100, 84_100], 8)]);
    expect(basis.runsAnEvening).toBe(4);
    expect(basis.lapsARun).toBe(6);
    // Differences 200, −200, 200 on three evenings, and one of 0.
    const squares = 9 * 200 ** 2 - 600 ** 2 / 10;
    expect(basis.spread.usual).toEqual({
      known: true,
      value: { ms: expect.closeTo(Math.sqrt(squares / 9), 6), differences: 10 },
    });
    expect(basis.usualMs).toEqual({ known: true, value: 84_200 });
    const long = basisOf([...lately], "2026-08-01");
    expect(long.spread.usual).toMatchObject({ known: false, reason: { has: 0 } });
    expect(long.runsAnEvening).toBeUndefined();
  });

  it("offers a fifth of the spread between sessions, and a thousandth of the lap where that is more", () => {
    const even = basisOf([30, 32, 34, 36].map((day) => driven(day, [84_000, 84_000])));
    expect(even.worthwhile.usual).toEqual({ known: true, value: expect.closeTo(84.03, 6) });
    expect(even.worthwhile.scatter).toEqual({ known: true, value: expect.closeTo(84.03, 6) });
    const wild = basisOf([30, 31, 32, 33, 34, 35].map((day) => driven(day, [84_000 + 2400 * (day % 2)])));
    expect(wild.worthwhile.usual.known && wild.worthwhile.usual.value).toBeGreaterThan(84.1);
  });

  it("says what is lacking", () => {
    const basis = basisOf([driven(30, [84_000])]);
    expect(basis.usualMs).toMatchObject({ known: false, reason: { needs: 2, of: "session", has: 1 } });
    expect(basis.worthwhile.usual).toEqual(basis.usualMs);
    expect(basis.spread.scatter).toMatchObject({ known: false, reason: { of: "pair of neighbouring runs" } });
  });

  it("has a scatter's spread of its own, from runs of five laps known to all decimals", () => {
    const uneven = (n: number) => [0, 1, 2, 3, 4, 5].map((lap) => 84_000 + (lap % 2) * (n % 2 ? 100 : 300));
    const digest = sessionDigest(
      aSession(30),
      [1, 2, 3, 4, 5, 6].map((n) => aRun(n, uneven(n), { sessionId: aSession(30).id })),
      choices,
    );
    const { spread } = basisOf([digest]);
    // Scatters 100/√2 and 300/√2 by turns: differences of ±141.42, three up and two down.
    const step = 200 / Math.SQRT2;
    const squares = 5 * step ** 2 - step ** 2 / 5;
    expect(spread.scatter).toEqual({
      known: true,
      value: { ms: expect.closeTo(Math.sqrt(squares / 4), 6), differences: 5 },
    });
  });
});
