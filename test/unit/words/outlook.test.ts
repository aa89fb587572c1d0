import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandMeaning, cautions, sayChance, sayCurve, sayExpected } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

describe("chance", () => {
  it.each([
    [0.7, "14 chances in 20"],
    [0.05, "1 chance in 20"],
    [0.01, "fewer than 1 chance in 20"],
    [0.99, "more than 19 chances in 20"],
  ])("%d is %s", (chance, sentence) => expect(sayChance(chance)).toBe(sentence));

  it("is never further off than half a chance", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.026, max: 0.974, noNaN: true }), (chance) => {
        const [told = 0, all] = (sayChance(chance).match(/\d+/g) ?? []).map(Number);
        expect(all).toBe(20);
        expect(Math.abs(told / 20 - chance)).toBeLessThanOrEqual(0.0250001);
      }),
      { seed: 8 },
    ));
});

describe("when a target is likely to be reached", () => {
  const today = "2026-10-20";
  const [low, mid, high] = ["2026-11-01", "2026-12-03", "2027-03-25"];
  it.each([
    [
      { low, mid, high },
      "very unlikely before Sun 1 Nov 2026, as likely as not by early December, very likely by March 2027",
    ],
    [
      { low, mid, high: undefined },
      "very unlikely before Sun 1 Nov 2026, as likely as not by early December, not yet very likely within a year",
    ],
    [
      { low, mid: undefined, high: undefined },
      "very unlikely before Sun 1 Nov 2026, less likely than not within a year",
    ],
    [{ low: mid, mid, high }, "as likely as not by early December, very likely by March 2027"],
    [{ low, mid: high, high }, "very unlikely before Sun 1 Nov 2026, very likely by March 2027"],
    [{ low: mid, mid, high: mid }, "very likely by early December"],
    [
      { low: mid, mid, high: undefined },
      "as likely as not by early December, not yet very likely within a year",
    ],
    [{ low: undefined, mid: undefined, high: undefined }, "very unlikely within a year"],
  ])("%o", (dates, sentence) => expect(sayExpected(dates, today)).toBe(sentence));
});

describe("the level in words", () => {
  const level = {
    chanceLevel: 0.31,
    isLevel: false,
    levelsOff: { kind: "at", ms: { low: 82_100, mid: 82_400, high: 82_900 } },
    isMostlyAssumption: false,
  } as const;

  it("tells the chance that it no longer moves, and where it levels off to tenths", () =>
    expect(sayCurve(level)).toBe(
      "No longer moving: 6 chances in 20. It levels off at about 1:22.4, between 1:22.1 and 1:22.9.",
    ));

  it("says nothing from fewer than four sessions, and of the end that it cannot be told", () => {
    const untold = { ...level, chanceLevel: 0.04, levelsOff: { kind: "untold" } } as const;
    expect(sayCurve({ ...untold, isMostlyAssumption: true })).toBe(
      "Where it leads cannot be told yet: it needs 4 sessions.",
    );
    expect(sayCurve(untold)).toBe(
      "No longer moving: 1 chance in 20. Where it levels off cannot be told yet.",
    );
  });

  it("sees no end of rising times, and none ahead of a level at rest", () => {
    expect(sayCurve({ ...level, levelsOff: { kind: "rising" } })).toContain("no levelling off is in sight");
    expect(sayCurve({ ...level, chanceLevel: 0.9, isLevel: true, levelsOff: { kind: "already" } })).toBe(
      "No longer moving: 18 chances in 20.",
    );
  });

  it("explains the bands so that they add up to twenty", () => {
    const [all, , pale = 0, outside = 0] = (bandMeaning.match(/\d+/g) ?? []).map(Number);
    expect(pale + outside).toBe(all);
  });
});

describe("the cautions", () => {
  it("are well formed and name what decides", () => {
    for (const caution of Object.values(cautions)) expectWellFormed(caution);
    expect(cautions.wheel).toMatch(/8 N·m.*thumbs.*stop button.*children.*maker's manual/);
    expect(cautions.health).toMatch(/nausea.*break every hour.*photosensitive epilepsy.*makers' manuals/);
    expect(cautions.simulatorOnly).toMatch(/road.*local law.*circuit's rules.*licensed instruction/);
  });
});
