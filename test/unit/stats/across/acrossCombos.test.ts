import { describe, expect, it } from "vitest";
import type { ReferenceLap, Target } from "#domain";
import { acrossCombos, acrossTrend, type ComboForLine, type SessionDigest, sessionDigest } from "#stats";
import { aRun, aSession, choices } from "../someRows.ts";

const today = "2026-02-01";
const combo = (comboId: string, digests: SessionDigest[], more: Partial<ComboForLine> = {}) => ({
  comboId,
  digests,
  references: [],
  pages: [],
  targets: [],
  ...more,
});
const aReference = (fields: Partial<ReferenceLap> = {}): ReferenceLap => ({
  id: "r",
  createdAt: 0,
  updatedAt: 0,
  comboId: "old",
  ms: 80_000,
  decimals: 3,
  source: "a friend",
  ...fields,
});
const aTarget = (fields: Partial<Target>): Target => ({
  id: "t",
  createdAt: 0,
  updatedAt: 0,
  comboId: "old",
  kind: "best",
  value: 87_000,
  setAt: 0,
  setOn: "2026-01-01",
  ...fields,
});

describe("across combos", () => {
  const old = [sessionDigest(aSession(0), [aRun(1, [90_000, 89_500, 89_000, 88_200, 88_000])], choices)];
  const recent = [sessionDigest(aSession(5), [aRun(1, [84_000, [85_000, "off"]])], choices)];
  const lines = acrossCombos(
    [combo("old", old, { references: [aReference()] }), combo("never", []), combo("recent", recent)],
    today,
  );

  it("puts the last driven first and leaves out what was never driven", () => {
    expect(lines.map((line) => line.comboId)).toEqual(["recent", "old"]);
  });

  it("compares in percent and per hundred laps", () => {
    expect(lines[1]).toMatchObject({ toReferencePercent: 10, lapsUntilOnThePace: 4, mistakesPer100: 0 });
    expect(lines[1]?.usualToBestPercent).toBeCloseTo((100 * 1000) / 88_000, 9);
    expect(lines[0]).toMatchObject({ mistakesPer100: 50, lapsUntilOnThePace: 1, scatterPercent: undefined });
    expect(lines[0]?.cleanShare?.share).toBe(0.5);
  });

  it("gives the PB with its day, and of several reference laps takes the newest", () => {
    expect(lines[1]?.best).toMatchObject({ ms: 88_000, date: "2026-01-01" });
    const references = [aReference({ ms: 44_000, updatedAt: 9 }), aReference()];
    expect(acrossCombos([combo("old", old, { references })], today)[0]?.toReferencePercent).toBe(100);
  });

  it("counts the laps of earlier sessions until the pace was there", () => {
    const digests = [
      sessionDigest(aSession(0), [aRun(1, [90_000, 89_000, 88_500])], choices),
      sessionDigest(aSession(1), [aRun(1, [86_000, 84_500, 84_000], { sessionId: "b" })], choices),
    ];
    expect(acrossCombos([combo("new", digests)], today)[0]?.lapsUntilOnThePace).toBe(5);
  });

  it("names the nearest target that is neither reached, archived nor past", () => {
    const targets = [
      aTarget({ id: "past", by: "2026-01-31" }),
      aTarget({ id: "reached", by: "2026-02-02", value: 88_000 }),
      aTarget({ id: "archived", by: "2026-02-03", archivedAt: 1 }),
      aTarget({ id: "no date" }),
      aTarget({ id: "next", by: today }),
      aTarget({ id: "share", by: "2026-02-02", kind: "cleanShare", value: 900 }),
    ];
    expect(acrossCombos([combo("old", old, { targets })], today)[0]?.nextTarget?.id).toBe("next");
    const rest = targets.filter(({ id }) => id !== "next");
    expect(acrossCombos([combo("old", old, { targets: rest })], today)[0]?.nextTarget?.id).toBe("no date");
  });
});

describe("a figure from combo to combo", () => {
  /** Combos a week apart, each with one mistake in a run that grows longer. */
  const combos = (count: number, laps: (index: number) => number) =>
    Array.from({ length: count }, (_, index) => {
      const clean = Array.from({ length: laps(index) - 1 }, () => 84_000);
      const run = aRun(1, [...clean, [90_000, "off"]], { sessionId: `session ${7 * index}` });
      return combo(`combo ${index}`, [sessionDigest(aSession(7 * index), [run], choices)]);
    });

  it("falls where each new combo has fewer mistakes a hundred laps", () => {
    const lines = acrossCombos(
      combos(8, (index) => 4 + 2 * index),
      today,
    );
    expect(acrossTrend(lines, "mistakes")).toMatchObject({ known: true, value: { finding: "falling" } });
  });

  it("is no clear change where all are alike, and unknown under five combos", () => {
    const alike = acrossCombos(
      combos(6, () => 10),
      today,
    );
    expect(acrossTrend(alike, "mistakes")).toMatchObject({
      known: true,
      value: { finding: "no clear change", sessions: 6 },
    });
    expect(acrossTrend(alike.slice(0, 4), "mistakes")).toEqual({
      known: false,
      reason: { needs: 5, of: "combo with this figure", has: 4 },
    });
    expect(acrossTrend(alike, "toReference")).toEqual({
      known: false,
      reason: { needs: 5, of: "combo with this figure", has: 0 },
    });
  });
});
