import { describe, expect, it } from "vitest";
import type { Target } from "#domain";
import { levelOfPage, pageHistory, targetWays } from "#stats";
import { exactRuns } from "../../../../src/stats/combo/exactRuns.ts";
import { bestInARow } from "../../../../src/stats/pace/bestInARow.ts";
import { aDigest, lapsAbout } from "../period/manySessions.ts";

const page = Array.from({ length: 8 }, (_, number) =>
  aDigest(3 * number, lapsAbout(90_000 - 1000 * number, 10, number)),
);
const aTarget = (fields: Partial<Target>): Target => ({
  id: "target",
  createdAt: 0,
  updatedAt: 0,
  comboId: "combo",
  kind: "best",
  value: 82_000,
  setAt: page[2]?.startedAt ?? 0,
  setOn: page[2]?.date ?? "",
  ...fields,
});
const span = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };
const wayOf = (fields: Partial<Target>, on: typeof span = span) =>
  targetWays({ targets: [aTarget(fields)], span: on, page, driven: page })[0]?.points;

describe("the way to a target", () => {
  it("of a best lap is the PB line since its setting", () => {
    const points = wayOf({}) ?? [];
    const bests = page.slice(2).map(({ pace }) => pace.best);
    // Each session of this page beats the one before.
    expect(new Set(points.map(({ date }) => date)).size).toBe(6);
    expect(points.at(-1)?.value).toBe(bests.at(-1));
    expect(points.map(({ value }) => value)).toEqual(
      points.map(({ value }) => value).toSorted((a, b) => b - a),
    );
  });

  it("of a usual lap is the level as it was known after each session, whatever came later", () => {
    const points = wayOf({ kind: "median" }) ?? [];
    expect(points).toHaveLength(6);
    points.forEach(({ date, value }, index) => {
      const upTo = page.slice(0, index + 3);
      expect(date).toBe(upTo.at(-1)?.date);
      expect(Math.abs(value - (levelOfPage(upTo) ?? 0))).toBeLessThanOrEqual(5);
    });
    expect(pageHistory(page)).toHaveLength(8);
  });

  it("ends with the target's date, and is none for a target of another page", () => {
    expect(wayOf({ kind: "median", by: page[4]?.date ?? "" })?.at(-1)?.date).toBe(page[4]?.date);
    expect(wayOf({}, { ...span, from: page[3]?.startedAt ?? 0 })).toBeUndefined();
  });

  it("of a mean is each step of the best so many laps in a row, known before it was set or not", () => {
    const means = page.map((digest) => bestInARow(exactRuns(digest), 5)?.meanMs ?? Number.NaN);
    const points = wayOf({ kind: "meanOf", laps: 5 }) ?? [];
    expect(points.map(({ value }) => value)).toEqual(means.slice(2));
    // A slower evening is no step.
    const late = [...page, aDigest(30, lapsAbout(90_000, 10, 99))];
    const all = targetWays({
      targets: [aTarget({ kind: "meanOf", laps: 5 })],
      span,
      page: late,
      driven: late,
    });
    expect(all[0]?.points).toEqual(points);
  });

  it("of a scatter and of a share of clean laps is the figure of each session since it was set", () => {
    const scatters = page
      .slice(2)
      .map(({ pace: { consistency } }) => consistency.known && consistency.value.scatterMs);
    expect(wayOf({ kind: "scatter", value: 200 })?.map(({ value }) => value)).toEqual(scatters);
    expect(wayOf({ kind: "cleanShare", value: 900 })?.map(({ value }) => value)).toEqual(
      new Array(6).fill(1000),
    );
  });
});
