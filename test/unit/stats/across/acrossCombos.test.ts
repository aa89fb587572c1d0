import { describe, expect, it } from "vitest";
import type { ReferenceLap, Target } from "#domain";
import {
  type AcrossFigure,
  acrossCombos,
  acrossFigures,
  acrossTrend,
  acrossValue,
  type ComboForLine,
  type ComboLine,
  type SessionDigest,
  sessionDigest,
} from "#stats";
import { aPage, aRun, aSession, choices, type Told } from "../someRows.ts";

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
/** The digest of one run driven on a day. */
const evening = (day: number, laps: readonly Told[]) =>
  sessionDigest(aSession(day), [aRun(1, laps, { sessionId: `session ${day}` })], choices);
const lineOf = (digests: SessionDigest[], more: Partial<ComboForLine> = {}, on = today) =>
  acrossCombos([combo("one", digests, more)], on)[0] as ComboLine;
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
  const linesOf = () =>
    acrossCombos(
      [combo("old", old, { references: [aReference()] }), combo("never", []), combo("recent", recent)],
      today,
    );

  it("puts the last driven first and leaves out what was never driven", () => {
    expect(linesOf().map((line) => line.comboId)).toEqual(["recent", "old"]);
    const inTurn = acrossCombos([combo("recent", recent), combo("old", old)], today);
    expect(inTurn.map((line) => line.comboId)).toEqual(["recent", "old"]);
  });

  it("compares in percent and per hundred laps", () => {
    const lines = linesOf();
    expect(lines[1]).toMatchObject({ toReferencePercent: 10, lapsUntilOnThePace: 4, mistakesPer100: 0 });
    expect(lines[1]?.usualToBestPercent).toBeCloseTo((100 * 1000) / 88_000, 9);
    expect(lines[0]).toMatchObject({ mistakesPer100: 50, lapsUntilOnThePace: 1, scatterPercent: undefined });
    expect(lines[0]?.cleanShare?.share).toBe(0.5);
  });

  it("gives the PB with its day, and of several reference laps takes the newest", () => {
    expect(linesOf()[1]?.best).toMatchObject({ ms: 88_000, date: "2026-01-01" });
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

  it("tells a combo by all of its sessions, whatever order they came in", () => {
    const digests = [
      evening(2, [88_000, 89_000, [91_000, "off"]]),
      evening(0, [90_000]),
      evening(9, [88_500, 90_500]),
    ];
    expect(lineOf(digests)).toMatchObject({
      firstOn: "2026-01-01",
      firstAt: Date.UTC(2026, 0, 1, 20),
      lastOn: "2026-01-10",
      lastAt: Date.UTC(2026, 0, 10, 20),
      sessions: 3,
      laps: 6,
      drivingMs: 537_000,
      // One of six laps; the first lap within 1 % of 88 s is the second of all.
      mistakesPer100: 100 / 6,
      lapsUntilOnThePace: 2,
    });
  });

  it("counts the sessions of the present page only, and tells when the combo was driven first on any", () => {
    const digests = [evening(0, [80_000, 81_000]), evening(8, [90_000, 91_000, 92_000])];
    const line = lineOf(digests, { pages: [aPage(aSession(4).startedAt)] });
    expect(line).toMatchObject({ firstOn: "2026-01-01", sessions: 1, laps: 3, best: { ms: 90_000 } });
  });

  it("takes an evening that was emptied, or that only a guest drove, for none", () => {
    const guest = sessionDigest(aSession(8), [aRun(1, [80_000], { guest: "Ida" })], choices);
    const line = lineOf([evening(0, []), evening(2, [88_000, 89_000]), guest, evening(9, [])]);
    expect(line).toMatchObject({ firstOn: "2026-01-03", lastOn: "2026-01-03", sessions: 1, laps: 2 });
    expect(acrossCombos([combo("empty", [evening(0, [])])], today)).toEqual([]);
  });

  it("has a scatter that is the middle one of its sessions", () => {
    // Between neighbours in turn so much: the scatter is that over the root of two, the median 90 s or a little more.
    const uneven = (day: number, by: number) =>
      evening(
        day,
        [0, by, 0, by, 0].map((ms) => 90_000 + ms),
      );
    const line = lineOf([uneven(0, 900), uneven(1, 300), uneven(2, 450), evening(3, [90_000])]);
    expect(line.scatterPercent).toBeCloseTo((100 * 450) / Math.SQRT2 / 90_000, 9);
  });

  it("says nothing of what needs a clean lap where there is none", () => {
    expect(lineOf([evening(0, [[90_000, "off"]])], { references: [aReference()] })).toMatchObject({
      best: undefined,
      usualToBestPercent: undefined,
      lapsUntilOnThePace: undefined,
      toReferencePercent: undefined,
      scatterPercent: undefined,
      mistakesPer100: 100,
    });
    expect(lineOf([evening(0, [90_000])]).usualToBestPercent).toBeUndefined();
  });

  it("counts neither an out lap nor one without a time until the pace was there, but the lap just at 1 %", () => {
    const laps: Told[] = [[99_000, "out"], [undefined, "off"], [80_500, "cut"], 80_801, 80_800, 80_000];
    expect(lineOf([evening(0, laps)]).lapsUntilOnThePace).toBe(3);
  });

  it("tells how far the level has moved over the last twelve weeks, not since the first session", () => {
    const usual = (day: number, ms: number) => evening(day, new Array<number>(6).fill(ms));
    const digests = [usual(0, 92_000), usual(1, 91_500), usual(100, 91_000), usual(101, 90_500)];
    expect(lineOf(digests, {}, "2026-04-20").gain).toMatchObject({
      known: true,
      value: { from: "2026-04-11", to: "2026-04-12", sessions: 2 },
    });
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

  it.each<[AcrossFigure, number]>([
    ["scatter", 0.4],
    ["usualToBest", 1.2],
    ["cleanShare", 75],
    ["mistakes", 12.5],
    ["lapsUntilOnThePace", 9],
    ["toReference", 2.5],
  ])("is of %s what stands in its line", (figure, value) => {
    const line: ComboLine = {
      ...lineOf([evening(0, [90_000])]),
      scatterPercent: 0.4,
      usualToBestPercent: 1.2,
      cleanShare: { share: 0.75, low: 0.5, high: 0.9 },
      mistakesPer100: 12.5,
      lapsUntilOnThePace: 9,
      toReferencePercent: 2.5,
    };
    expect(acrossFigures).toContain(figure);
    expect(acrossValue(line, figure)).toBe(value);
    expect(acrossValue({ ...line, cleanShare: undefined }, "cleanShare")).toBeUndefined();
  });

  it("falls by what it falls in a hundred laps, those of a combo without the figure among them", () => {
    // Middles at 50, 200, 350, 450, 600 and 750 laps: one percent less a hundred laps, in the order driven.
    const told: [laps: number, scatter: number | undefined][] = [
      [100, 9.5],
      [200, 8],
      [100, undefined],
      [100, 5.5],
      [200, 4],
      [100, 2.5],
    ];
    const lines = told.map(([laps, scatterPercent], week) => ({
      ...lineOf([evening(7 * week, [90_000])]),
      laps,
      scatterPercent,
    }));
    const trend = acrossTrend(lines.toReversed(), "scatter");
    const per100Laps = { slope: expect.closeTo(-1, 9), low: expect.closeTo(-1, 9) };
    expect(trend).toMatchObject({ known: true, value: { finding: "falling", sessions: 5, per100Laps } });
    // A quarter of the usual figure, which is 5.5.
    expect(trend).toMatchObject({ value: { change: 1.375 } });
  });
});
