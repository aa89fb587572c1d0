import { describe, expect, test } from "vitest";
import { addDays, mondayOf, weekName, weekStart } from "#domain";
import { acrossCombos, seasonBegins, weekStatement } from "#stats";
import { gainInShort } from "#words";
import { comboKeys } from "../../../demo-data/combos.ts";
import { comboOf, preferences, reviewOf, rows, truth } from "./theDemo.ts";

const combos = comboKeys.map(comboOf);
const inDemo = (date: string) => date >= truth.firstDay && date <= truth.lastDay;

describe("the demo's combos side by side", () => {
  const lines = acrossCombos(combos, truth.lastDay);

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
    const lapsOf = (key: "ringHatch" | "moorSingle") =>
      lines.find(({ comboId }) => comboId === truth.combos[key].comboId)?.lapsUntilOnThePace ?? 0;
    expect(lapsOf("moorSingle")).toBeGreaterThan(0);
    expect(lapsOf("moorSingle")).toBeLessThan(lapsOf("ringHatch"));
    // It starts 3.5 % above its floor and halves that every 130 laps, so it cannot be there in the first sessions.
    expect(lapsOf("ringHatch")).toBeGreaterThan(50);
  });
});

describe("the gain over the demo's twelve weeks", () => {
  const lines = acrossCombos(combos, truth.lastDay);
  const lastWeek = weekStatement({
    monday: weekStart(truth.lastDay),
    today: truth.lastDay,
    combos,
    preferences,
  });

  test.each(comboKeys)(
    "is one on Review, All combos and in the week of %s, and its interval holds the truth",
    (key) => {
      const { comboId, medians } = truth.combos[key];
      const { gain } = reviewOf(key, { from: seasonBegins(truth.lastDay) });
      expect(lines.find((line) => line.comboId === comboId)?.gain).toEqual(gain);
      const ofWeek = lastWeek.lines.find((line) => line.comboId === comboId);
      const lately = reviewOf(key, { from: addDays(truth.lastDay, -27) }).gain;
      if (ofWeek !== undefined) expect(ofWeek.lately).toEqual(lately);
      if (lastWeek.main?.comboId === comboId) expect(lastWeek.main.season.gain).toEqual(gain);
      // Two or three evenings tell so little that nothing is claimed of them.
      if (!gain.known) {
        expect(gainInShort(gain).certainty).toMatch(/^[23] of 4 sessions$/);
        return;
      }
      const { from, to, low, high, change } = gain.value;
      const at = (day: string) => medians.find(({ date }) => date === day)?.ms ?? Number.NaN;
      const trueGain = at(to) - at(from);
      expect([low <= change, change <= high]).toEqual([true, true]);
      expect([low <= trueGain, trueGain <= high]).toEqual([true, true]);
    },
  );
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
