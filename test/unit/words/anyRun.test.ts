import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { accountTarget, pageOf } from "#combo";
import {
  efforts,
  isMistake,
  type Lap,
  type Run,
  remarkKinds,
  runKinds,
  type Session,
  surfaces,
} from "#domain";
import { runReport, sessionReport } from "#stats";
import {
  accountReading,
  accountTitle,
  sayAgainstRun,
  sayAgainstTarget,
  sayCounts,
  sayMistakes,
  sayPointedAt,
  sayRun,
  sayScatter,
  sayTrendInRun,
  suggestNextRun,
} from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const stamps = { createdAt: 0, updatedAt: 0 };
const preferences = { settlingLaps: 0, displayDecimals: 3, marginPercent: 0.5 } as const;
const session: Session = {
  ...stamps,
  id: "session",
  comboId: "combo",
  startedAt: 0,
  isTimeOfDayKnown: true,
  date: "2026-10-14",
  zone: "UTC",
  focus: "free",
  note: "",
};

const laps = fc.array(
  fc.record({
    noise: fc.option(fc.integer({ min: 0, max: 900 }), { nil: undefined, freq: 15 }),
    decimals: fc.constantFrom(3, 3, 3, 3, 3, 3, 2, 1),
    kind: fc.oneof(
      { weight: 8, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: fc.constantFrom(...remarkKinds.map(({ kind }) => kind)) },
    ),
    corner: fc.integer({ min: 1, max: 3 }),
  }),
  { maxLength: 14, size: "max" },
);

function mostly<T>(usual: T, all: readonly T[]) {
  return fc.oneof(
    { weight: 5, arbitrary: fc.constant(usual) },
    { weight: 1, arbitrary: fc.constantFrom(...all) },
  );
}

const rest = fc.record({
  kind: mostly("pace", runKinds),
  effort: mostly("full", efforts),
  surface: mostly("dry", surfaces),
  level: fc.integer({ min: 83_000, max: 85_500 }),
  msPerLap: fc.integer({ min: -150, max: 150 }),
  isGuest: fc.nat(9).map((number) => number === 0),
});

const runs = fc.array(fc.tuple(laps, rest), { minLength: 1, maxLength: 3 }).map((all) =>
  all.map(
    ([written, { isGuest, level, msPerLap, ...choices }], index): Run => ({
      ...stamps,
      ...choices,
      ...(isGuest && { guest: "" }),
      id: `run ${index}`,
      sessionId: session.id,
      comboId: session.comboId,
      n: index + 1,
      startedAt: index,
      note: "",
      laps: written.map(({ noise, decimals, kind, corner }, n): Lap => {
        const unit = 10 ** (3 - decimals);
        return {
          ...stamps,
          id: `lap ${index} ${n}`,
          n: n + 1,
          source: "typed",
          remarks: kind === undefined ? [] : [{ kind, corner }],
          ...(noise !== undefined && {
            ms: Math.floor((level + n * msPerLap + noise) / unit) * unit,
            decimals,
          }),
        };
      }),
    }),
  ),
);

describe("any run that can be written", () => {
  it("is said in well-formed sentences, the first of them short", () => {
    const found = new Set<string>();
    fc.assert(
      fc.property(
        runs,
        fc.option(fc.integer({ min: 82_500, max: 85_500 }), { nil: undefined }),
        fc.option(fc.integer({ min: 82_500, max: 85_500 }), { nil: undefined }),
        (all, pbMs, targetMs) => {
          const run = all.at(-1) as Run;
          const pb = pbMs === undefined ? undefined : { ms: pbMs };
          const report = runReport({ run, runsBefore: all.slice(0, -1), pb, targetMs, preferences });
          const target = accountTarget({
            session: { ...session, ...(targetMs !== undefined && { targetMs }) },
            page: pageOf([], session.startedAt),
            targets: [],
            references: [],
            pbBefore: pbMs,
          });
          const whole = sessionReport({ session, runs: all, preferences, target, pbBefore: pb });
          const cornersOfMistakes = run.laps
            .filter(isMistake)
            .flatMap((lap) => lap.remarks.flatMap(({ corner }) => corner ?? []));
          const next = suggestNextRun(report, { session: whole, cornersOfMistakes });
          found.add(report.finding.kind);
          expect(sayRun(report).length).toBeLessThanOrEqual(110);
          for (const sentence of [
            sayRun(report),
            sayTrendInRun(report.trend),
            sayMistakes(report),
            sayAgainstRun(report.againstRunBefore),
            sayAgainstTarget(report.againstTarget),
            sayPointedAt(report.pointedAt, report.laps),
            sayCounts(report.counts),
            sayScatter(report.scatter),
            accountTitle(whole),
            accountReading(whole),
            next.suggestion,
            next.reason,
            next.check,
          ])
            expectWellFormed(sentence);
        },
      ),
      { seed: 12, numRuns: 300 },
    );
    expect([...found].sort()).toEqual([
      "against run before",
      "drift",
      "few",
      "first best",
      "guest",
      "level with best",
      "mistakes",
      "new best",
      "no times",
      "spread",
      "target reached",
    ]);
  }, 20_000);
});
