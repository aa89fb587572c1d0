import { describe, expect, test } from "vitest";
import { brierScore } from "#stats";
import { rows, runsOf, truth } from "./theDemo.ts";

const week = (n: number) => {
  const from = Date.parse(truth.firstDay) + (n - 1) * 7 * 86_400_000;
  const day = (at: number) => new Date(at).toISOString().slice(0, 10);
  return { from: day(from), to: day(from + 6 * 86_400_000) };
};
const isIn = (day: string, n: number) => day >= week(n).from && day <= week(n).to;
const ofWeekEight = rows.forecasts.filter(({ madeOn, by }) => isIn(madeOn, 8) && isIn(by, 12));

/** Whether so many laps in a row without any remark have such a mean somewhere in a run. */
function hasMean(runs: ReturnType<typeof runsOf>, count: number, value: number): boolean {
  return runs.some(({ laps }) =>
    laps.some((_, first) => {
      const row = laps.slice(first, first + count);
      if (row.length < count || row.some(({ ms, remarks }) => ms === undefined || remarks.length > 0))
        return false;
      return row.reduce((sum, { ms = 0 }) => sum + ms, 0) <= count * value;
    }),
  );
}

describe("the forecasts that the demo came with", () => {
  test("what was said in week 8 of a target for week 12 is scored as the laps have it", () => {
    const [said, ...others] = ofWeekEight;
    expect(others).toEqual([]);
    expect(said).toMatchObject({
      kind: "meanOf",
      laps: 5,
      value: 84_000,
      reached: true,
      scoredOn: "2026-11-21",
    });
    const { madeOn = "", by = "", comboId = "" } = said ?? {};
    const driven = rows.sessions.filter(
      (one) => one.comboId === comboId && one.date > madeOn && one.date <= by,
    );
    expect(driven.some(({ id }) => hasMean(runsOf(id), 5, 84_000))).toBe(true);
    const before = rows.sessions.filter((one) => one.comboId === comboId && one.date <= madeOn);
    expect(before.some(({ id }) => hasMean(runsOf(id), 5, 84_000))).toBe(false);
  });

  test("one is kept a session and target, after the day it was set, each scored once its date has passed", () => {
    const keys = rows.forecasts.map(({ targetId, madeAfter }) => `${targetId} ${madeAfter}`);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { targetId, madeOn, by, reached, madeAfter } of rows.forecasts) {
      const target = rows.targets.find(({ id }) => id === targetId);
      expect(madeOn > (target?.setOn ?? "9")).toBe(true);
      expect(reached !== undefined).toBe(by < truth.lastDay);
      expect(rows.sessions.find(({ id }) => id === madeAfter)?.date).toBe(madeOn);
    }
  });

  test("the app was nearer to what came than always saying the share that came true", () => {
    const scored = rows.forecasts.flatMap(({ chance, reached }) =>
      reached === undefined ? [] : [{ chance, reached }],
    );
    const share = scored.filter(({ reached }) => reached).length / scored.length;
    const base = scored.map(({ reached }) => ({ chance: share, reached }));
    expect(brierScore(scored)).toBeLessThan(brierScore(base) ?? 0);
  });
});
