import { expect, test } from "vitest";
import { aboutRemark, daysBetween, type Lap, type RemarkKind, remarkKinds, timeOfDay } from "#domain";
import { rows, truth } from "./theDemo.ts";

const { runs, sessions } = rows;
const laps = runs.flatMap((run) => run.laps);
const remarks = laps.flatMap((lap) => lap.remarks);
const lapsIn = (sessionId: string) =>
  runs.filter((run) => run.sessionId === sessionId).reduce((sum, run) => sum + run.laps.length, 0);

test("the demo has the untidiness of real months in it", () => {
  expect(runs.some(({ surface }) => surface === "wet")).toBe(true);
  expect(runs.some(({ kind, effort }) => kind === "drill" && effort === "learning")).toBe(true);
  expect(runs.some(({ kind }) => kind === "warm-up")).toBe(true);
  expect(runs.some(({ summary }) => summary !== undefined)).toBe(true);
  expect(runs.some(({ lapsDriven = 0, laps }) => lapsDriven > laps.length)).toBe(true);
  expect(runs.some(({ guest }) => guest !== undefined)).toBe(true);
  expect(runs.some(({ kind, gridPlace, finishPlace }) => kind === "race" && gridPlace && finishPlace)).toBe(
    true,
  );
  expect(laps.some(({ ms, remarks }) => ms === undefined && remarks.length > 0)).toBe(true);
  expect(laps.some(({ source, decimals }) => source === "memory" && decimals === 1)).toBe(true);
  expect(laps.some(({ isNotBest }) => isNotBest)).toBe(true);
  expect(laps.some(({ deletedAt }) => deletedAt !== undefined)).toBe(true);
  expect(sessions.some(({ isTimeOfDayKnown }) => !isTimeOfDayKnown)).toBe(true);
  expect(sessions.some(({ id }) => lapsIn(id) === 3)).toBe(true);
  expect(rows.pages).toHaveLength(1);
});

test("one session runs past midnight and still belongs to the evening", () => {
  const late = sessions.filter(({ endedAt = 0, zone }) => Number(timeOfDay(endedAt, zone).slice(0, 2)) < 4);
  expect(late.map(({ date }) => date)).toEqual(["2026-10-29"]);
});

test("there is a break of two weeks in which nothing was driven", () => {
  const days = [...new Set(sessions.map(({ date }) => date))].sort();
  const gaps = days.slice(1).map((day, index) => daysBetween(days[index] as string, day));
  expect(Math.max(...gaps)).toBeGreaterThanOrEqual(14);
  expect(gaps.filter((gap) => gap >= 10)).toHaveLength(1);
});

test("every kind of remark occurs that a driver types beside a lap but the in lap", () => {
  const seen = new Set<RemarkKind>(remarks.map(({ kind }) => kind));
  const missing = remarkKinds.map(({ kind }) => kind).filter((kind) => !seen.has(kind));
  expect(missing).toEqual(["in"]);
});

test("at Varnholt Ring in the hatch, corner 5 is named most often", () => {
  const named = new Map<number, number>();
  const own = (lap: Lap) => lap.remarks.filter(({ kind }) => aboutRemark(kind).mistake);
  for (const run of runs.filter(({ comboId }) => comboId === truth.combos.ringHatch.comboId))
    for (const { corner } of run.laps.flatMap(own))
      if (corner !== undefined) named.set(corner, (named.get(corner) ?? 0) + 1);
  const [first, second] = [...named].sort(([, a], [, b]) => b - a);
  expect(first?.[0]).toBe(5);
  expect(first?.[1]).toBeGreaterThan(second?.[1] ?? 0);
});
