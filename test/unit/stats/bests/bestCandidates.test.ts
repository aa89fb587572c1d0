import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { personalBests, sessionDigest } from "#stats";
import { bestLine } from "../../../../src/stats/bests/bestLine.ts";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

const candidatesOf = (laps: readonly Told[]) =>
  sessionDigest(aSession(0), [aRun(1, laps)], choices).bestCandidates;

describe("candidates for the personal-best line", () => {
  it("leave out a time in tenths that may be level, and a lap the driver has taken out", () => {
    const laps: Told[] = [83_456, { ms: 83_400, decimals: 1 }, { ms: 80_000, isNotBest: true }, 83_455];
    expect(candidatesOf(laps).map((candidate) => candidate.ms)).toEqual([83_456, 83_455]);
  });

  it("say which of them the driver confirmed as odd", () => {
    const laps: Told[] = [{ ms: 12_000_000, isOdd: true }, 83_456];
    expect(candidatesOf(laps).map(({ ms, isOdd }) => [ms, isOdd])).toEqual([
      [12_000_000, true],
      [83_456, undefined],
    ]);
  });

  it("of several sessions give the line that all their laps give", () => {
    const lap = fc.record({
      ms: fc.integer({ min: 834, max: 840 }).map((tenths) => 100 * tenths),
      more: fc.integer({ min: 0, max: 99 }),
      decimals: fc.constantFrom(1, 3),
    });
    fc.assert(
      fc.property(fc.array(fc.array(lap, { maxLength: 8 }), { maxLength: 5 }), (sessions) => {
        const told = sessions.map((laps) =>
          laps.map(({ ms, more, decimals }): Told => ({ ms: decimals === 1 ? ms : ms + more, decimals })),
        );
        const digests = told.map((laps, day) =>
          sessionDigest(aSession(day), [aRun(1, laps, { sessionId: `${day}` })], choices),
        );
        const all = told.flatMap((laps, day) =>
          aRun(1, laps, { sessionId: `${day}` }).laps.map(({ id, ms = 0, decimals = 3 }) => ({
            id,
            at: day,
            ms,
            decimals,
            remarks: [],
          })),
        );
        const line = bestLine(digests.flatMap((digest) => digest.bestCandidates));
        expect(line.map((step) => step.lapId)).toEqual(personalBests(all).map((step) => step.lapId));
      }),
      { seed: 13, numRuns: 300 },
    );
  });
});
