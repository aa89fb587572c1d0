import { describe, expect, test } from "vitest";
import { addDays, mondayOf, weekName } from "#domain";
import { acrossCombos, seasonBegins, weekStatement } from "#stats";
import { comboKeys } from "../../../demo-data/combos.ts";
import { comboOf, preferences, reviewOf, rows, truth } from "./theDemo.ts";

const combos = comboKeys.map(comboOf);
const present = combos.map((combo) => {
  const pageFrom = Math.max(0, ...combo.pages.map(({ from }) => from));
  return { ...combo, digests: combo.digests.filter(({ startedAt }) => startedAt >= pageFrom) };
});
const inDemo = (date: string) => date >= truth.firstDay && date <= truth.lastDay;

describe("the demo's combos side by side", () => {
  const lines = acrossCombos(present, truth.lastDay);

  test.each(comboKeys)("%s has the laps, mistakes, best lap and trend that are true of it", (key) => {
    const { comboId, best, sessions, laps } = truth.combos[key];
    const line = lines.find((one) => one.comboId === comboId);
    expect(line?.gain).toEqual(reviewOf(key, { from: seasonBegins(truth.lastDay) }).gain);
    expect(line?.sessions).toBe(sessions);
    expect(line?.laps).toBe(laps.driven);
    expect([line?.best?.lapId, line?.best?.ms]).toEqual([best.lapId, best.ms]);
    // Every mistake with a time and every lap without one; drills, races and wet laps may hold more.
    const least = (100 * (laps.mistake + laps.noTime)) / laps.driven;
    expect(line?.mistakesPer100).toBeGreaterThanOrEqual(least);
  });

  test("the flat combo is at its pace sooner than the one that was learned", () => {
    const lapsOf = (key: "fenHatch" | "ashSingle") =>
      lines.find(({ comboId }) => comboId === truth.combos[key].comboId)?.lapsUntilOnThePace ?? 0;
    expect(lapsOf("ashSingle")).toBeGreaterThan(0);
    expect(lapsOf("ashSingle")).toBeLessThan(lapsOf("fenHatch"));
    // It starts 3.5 % above its floor and halves that every 130 laps, so it cannot be there in the first sessions.
    expect(lapsOf("fenHatch")).toBeGreaterThan(50);
  });
});

describe("the demo's weeks", () => {
  const weeks = Array.from({ length: 12 }, (_, week) => addDays(truth.firstDay, 7 * week));
  const statements = weeks.map((day) =>
    weekStatement({ monday: mondayOf(weekName(day)) ?? "", today: truth.lastDay, combos, preferences }),
  );

  test("together hold every session and lap of the twelve weeks, once", () => {
    expect(inDemo(weeks[0] ?? "") && inDemo(weeks[11] ?? "")).toBe(true);
    const sessions = statements.reduce((sum, { total }) => sum + total.sessions, 0);
    expect(sessions).toBe(rows.sessions.length);
    for (const key of comboKeys) {
      const { comboId, laps } = truth.combos[key];
      const own = statements.flatMap(({ lines }) => lines.filter((line) => line.comboId === comboId));
      const isOnePage = combos.find((combo) => combo.comboId === comboId)?.pages.length === 0;
      const driven = own.reduce((sum, line) => sum + line.laps, 0);
      // The truth counts the present page alone.
      if (isOnePage) expect(driven).toBe(laps.driven);
      else expect(driven).toBeGreaterThan(laps.driven);
    }
  });

  test("carry the PB forward from week to week, begin afresh where a page was turned, and end with the true one", () => {
    for (const key of comboKeys) {
      const own = statements.flatMap(({ lines }) =>
        lines.filter(({ comboId }) => comboId === truth.combos[key].comboId),
      );
      const turned = combos.find(({ comboId }) => comboId === truth.combos[key].comboId)?.pages.length;
      const gaps = own.slice(1).filter((line, index) => line.bestBefore?.lapId !== own[index]?.best?.lapId);
      expect(gaps.length).toBe(turned);
      expect(own.at(-1)?.best?.lapId).toBe(truth.combos[key].best.lapId);
    }
  });
});
