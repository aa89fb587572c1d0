import { describe, expect, it } from "vitest";
import type { Target } from "#domain";
import { pageHistory, type SessionDigest } from "#stats";
import { targetPoints } from "../../../../src/stats/combo/targetPoints.ts";
import type { LevelKnown } from "../../../../src/stats/level/levelKnown.ts";
import { aDigest, aDigestOf } from "../period/manySessions.ts";
import { aRun, aSession, type Told } from "../someRows.ts";

const aTarget = (fields: Partial<Target>): Target => ({
  id: "target",
  createdAt: 0,
  updatedAt: 0,
  comboId: "combo",
  kind: "best",
  value: 83_000,
  setAt: 0,
  setOn: "2026-01-01",
  ...fields,
});
/** A level of which only the chance to lie under a value is known, session by session. */
const levelWith = (...chances: (number | undefined)[]): LevelKnown => ({
  chanceUnder: (session, value) => (value === 83_000 ? chances[session] : 2),
  after: () => undefined,
});
const pointsOf = (fields: Partial<Target>, page: readonly SessionDigest[], level = levelWith()) =>
  targetPoints(aTarget(fields), { page, history: pageHistory(page), level });
const told = (points: ReturnType<typeof pointsOf>) =>
  points.map(({ date, isThere, isAway }) => [date.slice(-2), isThere ? "there" : isAway ? "away" : "open"]);
const five = (ms: number): Told[] => new Array<number>(5).fill(ms);

describe("what sessions say about a target", () => {
  it("of a best: each lap that may be one, by its latest possible value", () => {
    const page = [
      aDigest(0, [83_500]),
      aDigest(1, [83_900]),
      aDigest(2, [{ ms: 83_000, decimals: 2 }]),
      aDigest(3, [82_999]),
    ];
    expect(told(pointsOf({}, page))).toEqual([
      ["01", "open"],
      ["02", "open"],
      ["03", "open"],
      ["04", "there"],
    ]);
    // Beside "about 1:22.9" it is no new PB, and yet surely there.
    const tie = [aDigest(0, [{ ms: 82_900, decimals: 1 }]), aDigest(1, [82_950])];
    expect(told(pointsOf({ value: 82_960 }, tie))).toEqual([
      ["01", "open"],
      ["02", "there"],
    ]);
    expect(pointsOf({}, page)[0]?.at).toBe(aSession(0).startedAt + 83_500);
  });

  it("of laps in a row: whether so many clean ones of one run were as fast, and never that they are away", () => {
    const page = [
      aDigest(0, [82_900, 83_100, 84_000]),
      aDigest(1, [82_900, 83_101]),
      aDigest(2, [82_900, [83_000, "off"], 82_900]),
      aDigestOf(3, [aRun(1, [82_900]), aRun(2, [82_900])]),
      aDigest(4, []),
    ];
    expect(told(pointsOf({ kind: "meanOf", laps: 2 }, page))).toEqual([
      ["01", "there"],
      ["02", "open"],
      ["03", "open"],
      ["04", "open"],
      ["05", "open"],
    ]);
    expect(pointsOf({ kind: "meanOf", laps: 2 }, page)[1]?.at).toBe(aSession(1).startedAt);
    expect(told(pointsOf({ kind: "meanOf" }, page.slice(1, 2)))).toEqual([["02", "there"]]);
  });

  it("of a scatter: session by session, those of fewer than five exact laps left out", () => {
    const uneven = (by: number): Told[] => [0, by, 0, by, 0].map((ms) => 84_000 + ms);
    const page = [aDigest(0, uneven(0)), aDigest(1, uneven(500)), aDigest(2, [84_000, 84_100])];
    expect(told(pointsOf({ kind: "scatter", value: 300 }, page))).toEqual([
      ["01", "there"],
      ["02", "away"],
    ]);
    expect(told(pointsOf({ kind: "scatter", value: 0 }, page.slice(0, 1)))).toEqual([["01", "there"]]);
  });

  it("of a share of clean laps: session by session from five timed laps on, the target itself included", () => {
    const off: Told = [90_000, "off"];
    const page = [
      aDigest(0, [84_000, 84_000, 84_000, 84_000, off]),
      aDigest(1, [84_000, 84_000, 84_000, off, off]),
      aDigest(2, [84_000, 84_000, 84_000, 84_000]),
    ];
    expect(told(pointsOf({ kind: "cleanShare", value: 800 }, page))).toEqual([
      ["01", "there"],
      ["02", "away"],
    ]);
  });
});

describe("what the level says about a usual lap", () => {
  const page = [0, 1, 2, 3, 4, 5].map((day) => aDigest(day, five(84_000)));

  it("is there at nineteen in twenty, away at one in twenty, and says nothing between", () => {
    const level = levelWith(undefined, 0.95, 0.94, 0.5, 0.06, 0.04);
    expect(told(pointsOf({ kind: "median" }, page, level))).toEqual([
      ["02", "there"],
      ["03", "open"],
      ["04", "open"],
      ["05", "open"],
      ["06", "away"],
    ]);
    expect(pointsOf({ kind: "median" }, page, level)[0]?.at).toBe(aSession(1).startedAt);
  });

  it("counts from the last session before it was set", () => {
    const level = levelWith(0.01, 0.02, 0.99, 0.98, 0.97, 0.96);
    const datesOf = (setAt: number) =>
      pointsOf({ kind: "median", setAt }, page, level).map(({ date, isThere }) => [date.slice(-2), isThere]);
    const { startedAt } = aSession(3);
    expect(datesOf(startedAt + 1)).toEqual([
      ["04", true],
      ["05", true],
      ["06", true],
    ]);
    expect(datesOf(startedAt)).toHaveLength(4);
    expect(datesOf(0)).toHaveLength(6);
  });
});
