import { describe, expect, it } from "vitest";
import type { Target } from "#domain";
import { comboReview, figureForTarget, type SessionDigest, sessionDigest } from "#stats";
import { exactRuns } from "../../../../src/stats/combo/exactRuns.ts";
import { latestUsual } from "../../../../src/stats/combo/latestUsual.ts";
import { normalAt } from "../../../../src/stats/random/draws.ts";
import { aDigest, aDigestOf } from "../period/manySessions.ts";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

/** Sessions of ten laps, two days apart, in times of so many decimals. */
function sessions(count: number, decimals = 3): SessionDigest[] {
  const step = 10 ** (3 - decimals);
  return Array.from({ length: count }, (_, number) => {
    const laps = Array.from({ length: 10 }, (_, lap) => ({
      ms: Math.floor((84_000 - 60 * number + 80 * normalAt(29, number, lap)) / step) * step,
      decimals,
    }));
    return sessionDigest(aSession(2 * number), [aRun(1, laps, { sessionId: `session ${number}` })], choices);
  });
}
const wanted: Target = {
  id: "target",
  createdAt: 0,
  updatedAt: 0,
  comboId: "combo",
  kind: "median",
  value: 83_000,
  setAt: 0,
  setOn: "2026-01-01",
};
const reviewOf = (digests: readonly SessionDigest[]) =>
  comboReview({
    comboId: "combo",
    digests,
    pages: [],
    period: {},
    today: "2026-02-01",
    targets: [wanted],
    references: [],
    preferences: choices,
  });

describe("the level that stands against a target of a usual lap", () => {
  it.each([2, 5, 12, 20])("is the same hundredth on Targets and in the week: %i sessions", (count) => {
    const review = reviewOf(sessions(count));
    const [state] = review.targets;
    expect(state?.now).toMatchObject({ decimals: 2, isLevel: true });
    expect((state?.now?.value ?? 1) % 10).toBe(0);
    const { left } = state?.progress.known ? state.progress.value : { left: Number.NaN };
    if (state?.progress.known) expect(left).toBe((state.now?.value ?? 0) - wanted.value);
  });

  it("is the usual lap of the last session where no level is known yet, as its laps are known", () => {
    const page = sessions(1, 1);
    const now = figureForTarget(wanted, page, () => undefined);
    expect(now).toEqual({ value: page[0]?.pace.median, decimals: 1 });
  });
});

const none = () => undefined;

describe("the figure that stands against a target", () => {
  it("of a best is the personal best with its decimals", () => {
    const page = [aDigest(0, [{ ms: 83_400, decimals: 1 }, 83_900]), aDigest(1, [83_399, [83_000, "off"]])];
    expect(figureForTarget({ kind: "best" }, page, none)).toEqual({ value: 83_399, decimals: 3 });
    expect(figureForTarget({ kind: "best" }, page.slice(0, 1), none)).toEqual({ value: 83_400, decimals: 1 });
    expect(figureForTarget({ kind: "best" }, [aDigest(0, [])], none)).toBeUndefined();
  });

  it("of laps in a row is the best mean of so many, one where no number is said", () => {
    const page = [aDigest(0, [83_500, 83_400, 83_300]), aDigest(1, [83_000, 84_400, 83_600])];
    expect(figureForTarget({ kind: "meanOf", laps: 3 }, page, none)).toEqual({ value: 83_400, decimals: 3 });
    expect(figureForTarget({ kind: "meanOf", laps: 2 }, page, none)?.value).toBe(83_350);
    expect(figureForTarget({ kind: "meanOf" }, page, none)?.value).toBe(83_000);
    expect(figureForTarget({ kind: "meanOf", laps: 4 }, page, none)).toBeUndefined();
  });

  it("of a usual lap is the level, to the hundredth", () => {
    expect(figureForTarget({ kind: "median" }, [], () => 83_456.7)).toEqual({
      value: 83_460,
      decimals: 2,
      isLevel: true,
    });
    expect(figureForTarget({ kind: "median" }, [], none)).toBeUndefined();
  });

  it("of a scatter and of a share of clean laps is that of the latest session with five laps", () => {
    const uneven = (by: number): Told[] => [0, by, 0, by, 0].map((ms) => 84_000 + ms);
    const page = [
      aDigest(0, uneven(100)),
      aDigest(1, [...uneven(300), [90_000, "off"]]),
      aDigest(2, [84_000, [90_000, "off"], 84_100, 84_000]),
    ];
    // Between neighbours in turn 300 ms: that over the root of two.
    expect(figureForTarget({ kind: "scatter" }, page, none)).toEqual({
      value: expect.closeTo(300 / Math.SQRT2, 9),
      decimals: 3,
    });
    expect(figureForTarget({ kind: "cleanShare" }, page, none)?.value).toBeCloseTo((1000 * 5) / 6, 9);
    expect(figureForTarget({ kind: "cleanShare" }, page.slice(0, 1), none)?.value).toBe(1000);
    expect(figureForTarget({ kind: "scatter" }, page.slice(2), none)).toBeUndefined();
    expect(figureForTarget({ kind: "cleanShare" }, page.slice(2), none)).toBeUndefined();
  });
});

describe("laps in a row", () => {
  it("are those that may be a best and are known exactly, run by run", () => {
    const digest = aDigestOf(0, [
      aRun(1, [84_000, [84_100, "off"], { ms: 84_200, decimals: 1 }, { ms: 84_300, isNotBest: true }]),
      aRun(2, []),
      aRun(3, [[undefined, "off"], 84_400]),
    ]);
    expect(exactRuns(digest)).toEqual([
      [84_000, undefined, undefined, undefined],
      [undefined, 84_400],
    ]);
  });
});

describe("the usual lap", () => {
  it("is that of the latest session with five pace laps", () => {
    const tenths = [84_000, 84_000, 84_100, 84_200, 84_300].map((ms): Told => ({ ms, decimals: 1 }));
    const page = [
      aDigest(0, [84_500, 84_500, 84_500, 84_500, 84_500]),
      aDigest(1, tenths),
      aDigest(2, [83_000]),
    ];
    expect(latestUsual(page)).toMatchObject({ ms: 84_100, decimals: 1 });
    expect(latestUsual(page.slice(2))).toBeUndefined();
    expect(latestUsual([])).toBeUndefined();
  });
});
