import { describe, expect, it } from "vitest";
import {
  comboReview,
  figureForTarget,
  runReport,
  type SessionReport,
  sessionDigest,
  sessionReport,
} from "#stats";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

/** Towed down the straight: faster than any other lap, and the driver said "not my PB". */
const towed: Told = { ms: 83_000, sectors: [29_000, 54_000], isNotBest: true };
const own: Told[] = Array.from({ length: 11 }, (_, lap) => ({
  ms: 84_000 + 20 * lap,
  sectors: [30_000 + 20 * lap, 54_000],
}));
const laps: Told[] = [...own.slice(0, 5), towed, ...own.slice(5)];
const run = aRun(1, laps);
const session = aSession(3, { targetMs: 83_900 });

/** What may not be told from the towed lap, of a session. */
function bestsOf({
  pace,
  best,
  threeInARow,
  account,
  nearTheBest,
  sectors,
  sumOfBestSectors,
}: SessionReport) {
  return {
    best: pace.best,
    bestOfTen: pace.bestOfTen,
    pb: best?.ms,
    threeInARow: threeInARow?.meanMs,
    account: account.known && { ...account.value, notBestLaps: 0 },
    nearTheBest,
    sectors: sectors.known && sectors.value.best,
    sum: sumOfBestSectors.known && sumOfBestSectors.value.ms,
  };
}

describe('a lap marked "not my PB"', () => {
  const reportOf = (told: readonly Told[]) =>
    sessionReport({
      session,
      runs: [aRun(1, told)],
      preferences: choices,
      target: { ms: 83_900, from: "session" },
    });

  it("moves no figure of a session that begins with a best, and is counted beside its account", () => {
    const report = reportOf(laps);
    expect(bestsOf(report)).toEqual(bestsOf(reportOf(own)));
    expect(report.account).toMatchObject({ value: { notBestLaps: 1, laps: 11 } });
    expect(report.counts.pace).toBe(12);
  });

  it("gives a run no best, and is not among those that reached the target", () => {
    const report = runReport({ run, runsBefore: [], targetMs: 83_900, preferences: choices });
    expect(report.best).toMatchObject({ value: { ms: 84_000 } });
    expect(report.againstTarget).toMatchObject({ value: { reached: 0, best: 100 } });
  });

  it("gives a period neither account nor sectors, and a target no mean of laps in a row", () => {
    const digest = sessionDigest(session, [run], choices);
    const review = comboReview({
      comboId: session.comboId,
      digests: [digest],
      pages: [],
      period: {},
      today: session.date,
      targets: [],
      references: [],
      preferences: choices,
    });
    expect(review.account).toMatchObject({ value: { pace: 102, notBestLaps: 1, laps: 11 } });
    expect(review.sectors).toMatchObject({ value: { best: 84_000, laps: 11 } });
    expect(review.bestSectors).toMatchObject({ value: { ms: 84_000 } });
    expect(figureForTarget({ kind: "meanOf", laps: 2 }, [digest], () => undefined)?.value).toBe(84_010);
  });
});
