import { describe, expect, it } from "vitest";
import { rigSteps, sessionDigest } from "#stats";
import { aRun, aSession, choices } from "../someRows.ts";

/** Day 20 of 2026, counted from 1 January: the day of the change. */
const changeDay = 20;
const dayOf = (dayNumber: number) => aSession(dayNumber).date;
const records = [
  { id: "old", from: dayOf(0) },
  { id: "new", from: dayOf(changeDay) },
];
/** A session of runs of six laps, each told by its rig and its time. */
const driven = (dayNumber: number, ...runs: readonly (readonly [rigId: string | undefined, ms: number])[]) =>
  sessionDigest(
    aSession(dayNumber),
    runs.map(([rigId, ms], index) =>
      aRun(
        index + 1,
        Array.from({ length: 6 }, () => ms),
        { sessionId: aSession(dayNumber).id, ...(rigId !== undefined && { rigId }) },
      ),
    ),
    choices,
  );
const stepOf = (...digests: ReturnType<typeof driven>[]) =>
  rigSteps({
    combos: [{ comboId: "combo", digests, pages: [] }],
    rigId: "new",
    records,
    today: dayOf(60),
  })[0];

describe("a change of the rig on the day of a session", () => {
  it("leaves laps driven before it, that evening with the old settings, before the change", () => {
    const evening = driven(changeDay, ["old", 85_000]);
    expect(stepOf(driven(10, ["old", 85_000]), evening, driven(21, ["new", 84_000]))).toMatchObject({
      before: { sessions: 2, usual: { ms: 85_000 } },
      after: { sessions: 1, usual: { ms: 84_000 } },
      mixed: 0,
    });
  });

  it("counts an evening driven with both settings on neither side, and says so", () => {
    const both = driven(changeDay, ["old", 85_000], ["new", 80_000]);
    const sides = [driven(10, ["old", 85_000]), driven(21, ["new", 84_000])] as const;
    expect(stepOf(sides[0], both, sides[1])).toMatchObject({
      before: { sessions: 1, usual: { ms: 85_000 } },
      after: { sessions: 1, usual: { ms: 84_000 } },
      mixed: 1,
    });
    expect(stepOf(...sides, driven(25, ["old", 86_000]))).toMatchObject({
      before: { sessions: 1 },
      after: { sessions: 1 },
      mixed: 1,
    });
  });

  it("goes by the date only where runs name no rig, or one that is gone", () => {
    const unnamed = [driven(19, [undefined, 85_000]), driven(changeDay, ["gone", 84_000])] as const;
    expect(stepOf(...unnamed)).toMatchObject({
      before: { usual: { ms: 85_000 } },
      after: { usual: { ms: 84_000 } },
    });
    expect(stepOf(driven(10, ["old", 85_000]), driven(21, ["old", 85_000]))).toBeUndefined();
  });
});
