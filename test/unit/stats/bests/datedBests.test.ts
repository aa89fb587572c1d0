import { describe, expect, it } from "vitest";
import { datedBests, rangeOfBests, sessionDigest } from "#stats";
import { sessionBests } from "../../../../src/stats/bests/sessionBests.ts";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

/** The digests of evenings, one a day from 1 January 2026 on. */
const digestsOf = (...evenings: readonly (readonly Told[])[]) =>
  evenings.map((laps, day) =>
    sessionDigest(aSession(day), [aRun(1, laps, { sessionId: aSession(day).id })], choices),
  );

describe("the personal-best line of a page", () => {
  it("names each step's session and day, in the order driven, whatever order the sessions come in", () => {
    const evenings = digestsOf([85_000, 84_600], [84_900], [84_500]);
    const line = [
      [85_000, "session 0", "2026-01-01"],
      [84_600, "session 0", "2026-01-01"],
      [84_500, "session 2", "2026-01-03"],
    ];
    for (const page of [evenings, evenings.toReversed()])
      expect(datedBests(page).map(({ ms, sessionId, date }) => [ms, sessionId, date])).toEqual(line);
    expect(datedBests([])).toEqual([]);
  });

  it("has the best lap of a run written as a whole where the run stands, with its own decimals", () => {
    const sessionId = aSession(0).id;
    const runs = [
      aRun(1, [85_000], { sessionId }),
      aRun(2, [], { sessionId, summary: { laps: 9, bestMs: 84_200, bestDecimals: 1 } }),
      aRun(3, [84_300], { sessionId }),
      aRun(4, [], { sessionId, summary: { laps: 4, bestMs: 83_900, isOdd: true } }),
    ];
    const bests = datedBests([sessionDigest(aSession(0), runs, choices)]);
    expect(bests.map(({ ms, decimals, isSummary, isOdd }) => ({ ms, decimals, isSummary, isOdd }))).toEqual([
      { ms: 85_000, decimals: 3, isSummary: false, isOdd: undefined },
      { ms: 84_200, decimals: 1, isSummary: true, isOdd: undefined },
      { ms: 83_900, decimals: 3, isSummary: true, isOdd: true },
    ]);
    expect(bests[1]).toMatchObject({ lapId: runs[1]?.id, runId: runs[1]?.id });
  });

  it("goes on after a run written as a whole without a best lap", () => {
    const sessionId = aSession(0).id;
    const runs = [aRun(1, [], { sessionId, summary: { laps: 9 } }), aRun(2, [84_300], { sessionId })];
    expect(datedBests([sessionDigest(aSession(0), runs, choices)]).map(({ ms }) => ms)).toEqual([84_300]);
  });
});

describe("the best laps of sessions", () => {
  it("are each session's fastest clean lap with its day, and none where no lap was clean", () => {
    const evenings = digestsOf([84_600, 85_000], [[83_000, "off"]], [84_900]);
    const bests = sessionBests(evenings);
    expect(bests.map(({ ms, date, sessionId }) => [ms, date, sessionId])).toEqual([
      [84_600, "2026-01-01", "session 0"],
      [84_900, "2026-01-03", "session 2"],
    ]);
  });

  it("have a range from two on", () => {
    const rangeIn = (...evenings: readonly (readonly Told[])[]) =>
      rangeOfBests({ sessionBests: sessionBests(digestsOf(...evenings)) });
    expect(rangeIn([84_600], [85_000], [84_900])).toEqual({ low: 84_600, high: 85_000 });
    expect(rangeIn([84_600], [84_900])).toEqual({ low: 84_600, high: 84_900 });
    expect(rangeIn([84_600])).toBeUndefined();
    expect(rangeIn()).toBeUndefined();
  });
});
