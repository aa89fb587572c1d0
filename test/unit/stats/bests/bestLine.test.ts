import { describe, expect, it } from "vitest";
import type { Run } from "#domain";
import { lapDifferences, runReport, sessionDigest, sessionReport } from "#stats";
import { bestLine } from "../../../../src/stats/bests/bestLine.ts";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

/** Sessions, each of runs told by kind and laps, and the times of the line their digests give. */
type Driven = readonly (readonly [Run["kind"], readonly Told[]])[];
const runsOf = (day: number, runs: Driven) =>
  runs.map(([kind, laps], index) => aRun(index + 1, laps, { kind, sessionId: aSession(day).id }));
const lineOf = (...sessions: readonly Driven[]) => {
  const digests = sessions.map((runs, day) => sessionDigest(aSession(day), runsOf(day, runs), choices));
  return bestLine(digests.flatMap(({ bestCandidates }) => bestCandidates)).map(({ ms }) => ms);
};

describe("a warm-up lap", () => {
  it("is not your first PB here, however fast, and no later PB is measured against it", () => {
    expect(lineOf([["warm-up", [85_000]]])).toEqual([]);
    expect(
      lineOf([
        ["warm-up", [85_000]],
        ["pace", [85_812, 85_740]],
      ]),
    ).toEqual([85_812, 85_740]);
    expect(
      lineOf(
        [["drill", [84_000]]],
        [
          ["warm-up", [84_500]],
          ["pace", [85_812]],
        ],
      ),
    ).toEqual([85_812]);
  });

  it("takes the PB from the second session with one on", () => {
    expect(lineOf([["pace", [85_812]]], [["warm-up", [85_600]]])).toEqual([85_812, 85_600]);
    expect(
      lineOf(
        [["race", [85_812]]],
        [
          ["drill", [85_600, 85_900]],
          ["pace", [85_700]],
        ],
      ),
    ).toEqual([85_812, 85_600]);
    expect(
      lineOf([
        ["pace", [85_812]],
        ["warm-up", [85_600]],
      ]),
    ).toEqual([85_812]);
  });

  it("has no mark in the ledger and no sentence about a PB on the first evening, on the second it has", () => {
    const [warmUp, pace] = runsOf(0, [
      ["warm-up", [85_000]],
      ["pace", [85_812, 85_740]],
    ]) as [Run, Run];
    const marks = (best: { ms: number; decimals: number } | undefined) =>
      [...lapDifferences([warmUp, pace], best, undefined).values()].flat().map(({ isBest }) => isBest);
    expect(marks(undefined)).toEqual([false, true, true]);
    expect(marks({ ms: 86_000, decimals: 3 })).toEqual([true, false, false]);
    const finding = (run: Run, pb?: { ms: number }) =>
      runReport({ run, runsBefore: [], pb, preferences: choices }).finding;
    expect(finding(warmUp).kind).toBe("few");
    expect(finding(warmUp, { ms: 86_000 }).kind).toBe("new best");
    const sameEvening = { run: warmUp, runsBefore: [pace], pb: { ms: 85_740 }, hasEarlierBest: false };
    expect(runReport({ ...sameEvening, preferences: choices }).finding.kind).toBe("few");
  });

  it("is still the best lap of its own run and of its session", () => {
    const [warmUp] = runsOf(0, [["warm-up", [85_000, 85_100]]]) as [Run];
    const report = runReport({ run: warmUp, runsBefore: [], preferences: choices });
    expect(report.best).toMatchObject({ known: true, value: { ms: 85_000 } });
    const session = sessionReport({ session: aSession(0), runs: [warmUp], preferences: choices });
    expect(session.best?.ms).toBe(85_000);
    expect(session.newBests).toEqual([]);
  });
});

describe("a first evening of two faster laps", () => {
  it("does not call 1:25.740 the first PB where 1:25.812 was stored before", () => {
    const finding = (laps: readonly Told[]) =>
      runReport({ run: aRun(1, laps), runsBefore: [], preferences: choices }).finding;
    expect(finding([85_812, 85_740])).toMatchObject({
      kind: "first best",
      ms: 85_740,
      first: { ms: 85_812, decimals: 3 },
    });
    expect(finding([85_740, 85_812])).toMatchObject({ kind: "first best", ms: 85_740, first: undefined });
  });
});
