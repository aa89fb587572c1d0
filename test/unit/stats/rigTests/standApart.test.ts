import { describe, expect, it } from "vitest";
import type { Run } from "#domain";
import {
  datedBests,
  levelOfPage,
  rigSteps,
  rigTestReport,
  runBasis,
  runReport,
  type SessionDigest,
  sessionDigest,
  sideBySide,
  spreadOfRunDifferences,
} from "#stats";
import { runTimes } from "../../../../src/stats/run/runTimes.ts";
import { aRun, aSession, choices } from "../someRows.ts";
import { aRigTest } from "./aRigTest.ts";

const rigTest = { id: "test", pair: 1, side: "B" } as const;
const laps = (level: number, many = 6) => Array.from({ length: many }, (_, lap) => level + 30 * (lap % 3));
const evening = (day: number, ...runs: Run[]) =>
  sessionDigest(
    aSession(day),
    runs.map((run) => ({ ...run, sessionId: aSession(day).id })),
    choices,
  );
const usual = (day: number) => evening(day, aRun(1, laps(84_000)), aRun(2, laps(84_010)));

describe("runs of a rig test", () => {
  const before = [0, 2, 4, 6].map(usual);
  const tested = evening(8, aRun(1, laps(80_000), { rigTest }), aRun(2, laps(80_000), { rigTest }));
  const mixed = evening(8, aRun(1, laps(84_000)), aRun(2, laps(80_000), { rigTest }));

  it("are counted as left out, and count as practice", () => {
    expect(tested.counts).toMatchObject({ pace: 0, test: 12, driven: 12 });
    expect(mixed.counts).toMatchObject({ pace: 6, test: 6, driven: 12 });
    expect(tested.timedDriven).toBe(12);
    expect(tested.drivingMs).toBe(960_360);
  });

  it("have no part in the level, and an evening of nothing else moves it not at all", () => {
    expect(tested.pace.median).toBeUndefined();
    expect(mixed.pace.median).toBe(84_030);
    const level = (...more: SessionDigest[]) => levelOfPage([...before, ...more]);
    expect(level(tested)).toBe(level());
    expect(level(mixed)).toBeGreaterThan(83_900);
  });

  it("are none of those that other runs are judged by, nor of the driver's own scatter", () => {
    const basis = (all: readonly SessionDigest[]) =>
      runBasis({
        page: all,
        driven: all,
        session: { startedAt: aSession(9).startedAt, date: aSession(9).date },
        surface: "dry",
      });
    expect(basis([...before, tested]).spread).toEqual(basis(before).spread);
    expect(spreadOfRunDifferences([...before, tested, ...before])).toEqual(
      spreadOfRunDifferences([...before, ...before]),
    );
  });

  it("may bring a personal best all the same", () => {
    expect(datedBests([...before, tested]).at(-1)).toMatchObject({ ms: 80_000, date: tested.date });
    const pb = { ms: 84_000, decimals: 3 };
    const report = (level: number) =>
      runReport({
        run: aRun(3, laps(level), { rigTest }),
        runsBefore: [],
        pb,
        targetMs: 84_500,
        preferences: choices,
      });
    expect(report(80_000).againstBest).toMatchObject({ known: true, value: { isNew: true } });
    const slower = { known: false, reason: { because: "not compared", run: "test" } };
    expect(report(84_100)).toMatchObject({
      againstBest: slower,
      againstTarget: slower,
      againstRunBefore: slower,
    });
  });

  it("are compared with no other run side by side, not even with one of their own test", () => {
    const sides = (...runs: readonly [Run, Run]) =>
      sideBySide({
        kind: "run",
        first: { session: aSession(0), runs: [runs[0]] },
        second: { session: aSession(1), runs: [runs[1]] },
        target: undefined,
        preferences: choices,
      } as unknown as Parameters<typeof sideBySide>[0]).apart;
    const one = aRun(1, laps(84_000), { rigTest });
    expect(sides(one, aRun(2, laps(84_000)))).toBe("test");
    expect(sides(one, aRun(2, laps(84_000), { rigTest: { ...rigTest, side: "A" } }))).toBe("test");
  });

  it("are on no side of a change of the rig", () => {
    const records = [
      { id: "old", from: aSession(0).date },
      { id: "new", from: aSession(7).date },
    ];
    const rest = before.map((digest) => digest);
    const both = evening(
      8,
      aRun(1, laps(83_000), { rigId: "new" }),
      aRun(2, laps(80_000), { rigId: "old", rigTest }),
    );
    const after = evening(10, aRun(1, laps(83_000), { rigId: "new" }));
    const [step] = rigSteps({
      combos: [{ comboId: "combo", digests: [...rest, both, after], pages: [] }],
      rigId: "new",
      records,
      today: aSession(12).date,
    });
    expect(step?.neither).toEqual([]);
    expect(step?.after?.usual.ms).toBe(83_030);
  });

  it("show the same usual lap at their head as their test reads, first laps settling", () => {
    const settling = { ...choices, settlingLaps: 2 } as const;
    const run = (side: "A" | "B", n: number) =>
      aRun(n, [95_000, 94_000, ...laps(84_000 + 100 * n)], { id: side, rigTest: { ...rigTest, side } });
    const runs = [run("A", 1), run("B", 2)];
    const report = rigTestReport(aRigTest("A", { endedAt: 9 }), runs, settling);
    const heads = runs.map((one) => runTimes(one, settling).usual);
    expect(heads).toEqual([
      { known: true, value: 84_130 },
      { known: true, value: 84_230 },
    ]);
    expect(report.isOver && report.pairs).toEqual([{ first: "A", a: 84_130, b: 84_230, difference: 100 }]);
  });
});
