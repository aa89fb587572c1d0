import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Figure, known, type NotCompared, unknown } from "#domain";
import { largestLine, type RunReport, type SessionReport, type TimeAccount } from "#stats";
import { type NextRun, sayEvidence, suggestNextRun } from "#words";
import { aReport, someCounts } from "./aReport.ts";
import { expectWellFormed } from "./wellFormed.ts";

const spread = { kind: "spread", scatterMs: 300, percent: 0.36, laps: 8 } as const;

function anAccount(pace: number, repeatability: number, mistakes: number): Figure<TimeAccount> {
  const balance = pace + repeatability + mistakes;
  return known({
    pace,
    repeatability,
    mistakes,
    others: 0,
    balance,
    laps: 20,
    notBestLaps: 0,
    cutLaps: 0,
    withoutTime: 0,
    sessions: 1,
    sessionsLeftOut: 0,
  });
}

const nothingToMeasure = unknown({ because: "nothing to measure a session against" });

function next(
  fields: Partial<RunReport> = {},
  account: Figure<TimeAccount> = nothingToMeasure,
  cornersOfMistakes: readonly number[] = [],
  sector?: number,
): NextRun {
  const largest = account.known ? largestLine(account.value) : undefined;
  const isOddAside = account.known && account.value.odd !== undefined;
  const workOn: SessionReport["workOn"] = largest && { ...largest, sector, isOddAside };
  const suggested = suggestNextRun(aReport(spread, fields), {
    session: {
      account,
      workOn,
      target: account === nothingToMeasure ? undefined : { ms: 83_900, from: "pb" },
    },
    cornersOfMistakes,
  });
  for (const sentence of [
    suggested.suggestion,
    suggested.reason,
    suggested.check,
    sayEvidence(suggested.evidence),
  ])
    expectWellFormed(sentence);
  return suggested;
}

describe("the next run", () => {
  it("works on the largest line of the account", () => {
    expect(next({}, anAccount(100, 300, 50)).reason).toBe(
      "Uneven laps cost most in this session: 0.30 s a lap between your best laps and your mean one.",
    );
    expect(next({}, anAccount(100, 50, 300)).reason).toBe(
      "Mistakes cost most in this session: 0.30 s a lap, laps without a time not counted.",
    );
    expect(next({}, anAccount(300, 50, 100)).reason).toBe(
      "Pace costs most in this session: your best laps are 0.30 s a lap slower than the PB before the session.",
    );
  });

  it("sends the driver of a rig test on to its next run, whose setting may be the other one", () => {
    const tested = next({ againstRunBefore: unknown({ because: "not compared", run: "test" }) });
    expect(tested.suggestion).toBe("While the rig test lasts, its next run: Log says with which setting.");
  });

  it("sends nobody to drive more evenly whose runs differ, and not the laps in them", () => {
    const even = { best: known({ ms: 84_900, decimals: 3, lapId: "lap" }), usual: known(85_040) };
    const apart = next(even, anAccount(100, 720, 50));
    expect(apart.suggestion).toBe("8 laps with fuel, tyres and line as in the session's fastest run.");
    expect(apart.reason).toBe(
      "Uneven laps cost 0.72 s a lap in this session, but between its runs: in this one the usual lap lies 0.14 s over the best.",
    );
    const half = { ...even, usual: known(85_260) };
    expect(next(half, anAccount(100, 720, 50)).suggestion).toContain("as equal as you can");
    expect(next(even, anAccount(720, 100, 50)).suggestion).toContain("replay");
  });

  it("names the sector that holds most of it", () => {
    expect(next({}, anAccount(100, 300, 50), [], 1).suggestion).toContain("sector 2");
    expect(next({}, anAccount(300, 100, 50), [], 0).suggestion).toContain("sector 1 first");
  });

  it("is about one corner when two or more mistakes name it", () => {
    const suggested = next({ mistakes: 3 }, anAccount(100, 300, 50), [7, 5, 5]);
    expect(suggested.suggestion).toBe(
      "8 laps with corner 5 in mind: brake earlier there and keep the rest as it is.",
    );
    expect(suggested.reason).toBe("2 of this run's mistakes were at corner 5.");
    expect(next({ mistakes: 2 }, anAccount(100, 300, 50), [5, 7]).suggestion).not.toContain("corner");
  });

  it("is slower and clean after an untidy run", () => {
    const suggested = next({ mistakes: 3, flyingLaps: 9, isUntidy: true });
    expect(next({ mistakes: 3, flyingLaps: 12 }).suggestion).not.toContain("clean");
    expect(suggested.suggestion).toBe(
      "8 laps at learning effort, 70\u00a0to\u00a080\u00a0%, all of them clean.",
    );
    expect(suggested.reason).toBe("3 mistakes in 9 laps.");
  });

  it("is the same again after a few laps", () => {
    const suggested = next({ laps: 3, counts: someCounts({ pace: 3 }) }, anAccount(100, 300, 50));
    expect(suggested.suggestion).toBe("The same again, 8 laps in a row.");
    expect(suggested.reason).toBe("Two more laps for a verdict.");
  });

  it("is a pace run after a drill, however short, and the same again in the wet", () => {
    const after = (run: NotCompared, laps: number) =>
      next({ isPace: false, laps, againstRunBefore: unknown({ because: "not compared", run }) }).suggestion;
    for (const laps of [2, 8]) {
      expect(after("drill", laps)).toBe("A pace run of 8 laps.");
      expect(after("wet", laps)).toBe("The same again while the surface stays as it is.");
    }
    expect(after("partly written", 8)).toBe("A pace run of 8 laps.");
    const why = (run: NotCompared) =>
      next({ isPace: false, againstRunBefore: unknown({ because: "not compared", run }) }).reason;
    expect(why("warmUp")).toBe("Warm-up laps are not compared; a pace run will show the effect.");
    expect(why("easy")).toBe(
      "Laps at easy or learning effort are not compared; a pace run will show the effect.",
    );
    expect(why("wet")).toBe("Damp and wet laps are compared only with each other.");
    expect(next({ isPace: false }).reason).toBe(
      "These laps are not compared; a pace run will show the effect.",
    );
    expect(after("partly written", 2)).toBe("The same again, 8 laps in a row.");
  });

  it("says so when there is nothing to measure against, nothing lost, or a guest drove", () => {
    expect(next().reason).toBe("The next session here will be measured against today's PB.");
    expect(next({}, unknown({ needs: 5, of: "pace lap", has: 4 })).reason).toBe(
      "Not enough pace laps yet: 4 of 5.",
    );
    expect(next({}, anAccount(-100, 0, 0)).suggestion).toBe("The same again, or set a faster target.");
    expect(next({ isGuest: true }).reason).toBe("Someone else drove this run.");
  });

  it("says what reason and advice rest on", () =>
    expect(sayEvidence(next().evidence)).toBe(
      "The reason: measured on you. The advice: common practice, no source.",
    ));

  it("is one well-formed suggestion whatever the run was", () =>
    fc.assert(
      fc.property(
        fc.record({
          isGuest: fc.boolean(),
          isPace: fc.boolean(),
          laps: fc.nat(20),
          mistakes: fc.nat(8),
          isUntidy: fc.boolean(),
          counts: fc.record({ pace: fc.nat(20), wet: fc.nat(3), mistake: fc.nat(8) }).map(someCounts),
        }),
        fc.tuple(
          fc.integer({ min: -900, max: 900 }),
          fc.integer({ min: 0, max: 900 }),
          fc.integer({ min: -100, max: 900 }),
        ),
        fc.array(fc.integer({ min: 1, max: 12 }), { maxLength: 6 }),
        fc.option(fc.nat(4), { nil: undefined }),
        (fields, [pace, repeatability, mistakes], corners, sector) => {
          const suggested = next(fields, anAccount(pace, repeatability, mistakes), corners, sector);
          const corner = /corner (\d+)/i.exec(suggested.suggestion)?.[1];
          if (corner !== undefined)
            expect(corners.filter((number) => number === Number(corner)).length).toBeGreaterThanOrEqual(2);
        },
      ),
      { seed: 4 },
    ));
});
