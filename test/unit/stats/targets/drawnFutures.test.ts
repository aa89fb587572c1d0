import { describe, expect, it } from "vitest";
import { fairTargetsOf } from "../../../../src/stats/targets/fairTargets.ts";
import { chanceOf } from "../../../../src/stats/targets/forecastTarget.ts";
import { futureFigures } from "../../../../src/stats/targets/futureFigures.ts";
import { reachedBy } from "../../../../src/stats/targets/reachedBy.ts";

/** Ten futures of two sessions: the first is fast in the first ones, the second in the last. */
const first = Float64Array.of(10, 20, 30, 40, 50, 60, 70, 80, 90, 100);
const both = [first, first.toReversed()];
const always = new Float64Array(10).fill(5);

describe("the chance and the likely session, read off drawn futures", () => {
  it("by hand: a target of 45 comes to eight in ten, to half of all by the second session", () => {
    expect(chanceOf(both, 45)).toEqual({
      chance: 0.8,
      expectedSession: { low: 1, mid: 2, high: undefined },
    });
  });

  it("counts a future that comes just there", () => {
    expect(chanceOf(both, 50)).toEqual({ chance: 1, expectedSession: { low: 1, mid: 1, high: 2 } });
    expect(chanceOf(both, 20)).toEqual({
      chance: 0.4,
      expectedSession: { low: 1, mid: undefined, high: undefined },
    });
  });

  it("takes the first session that comes there, also where a later one does again", () => {
    expect(chanceOf([...both, always], 45)).toEqual({
      chance: 1,
      expectedSession: { low: 1, mid: 2, high: 3 },
    });
    expect(chanceOf([always, ...both], 45).expectedSession).toEqual({ low: 1, mid: 1, high: 1 });
  });

  it("is no chance without a session to come", () => {
    const none = { low: undefined, mid: undefined, high: undefined };
    expect(chanceOf([], 45)).toEqual({ chance: 0, expectedSession: none });
  });
});

describe("the figure that a share of the futures reach", () => {
  it("by hand: the best of each future, and so many of those", () => {
    // The best of each: 10 10 20 20 30 30 40 40 50 50.
    const figures = [0, 0.05, 0.2, 0.21, 0.5, 1].map((share) => reachedBy(both, share));
    expect(figures).toEqual([10, 10, 10, 20, 30, 50]);
    expect(reachedBy([always, ...both], 1)).toBe(5);
    expect(reachedBy([], 0.5)).toBe(Number.POSITIVE_INFINITY);
  });

  it("is a fair target at one half and a stretch at one fifth, in whole milliseconds", () => {
    expect(fairTargetsOf(both)).toEqual({ fair: 30, stretch: 10 });
    const halves = both.map((values) => values.map((value) => value + 0.6));
    expect(fairTargetsOf(halves)).toEqual({ fair: 31, stretch: 11 });
  });
});

describe("what futures are drawn of", () => {
  const history = [86_800, 85_900, 85_700].map((medianMs, i) => ({
    lapsBefore: 20 * i,
    laps: 20,
    medianMs,
    bestMs: medianMs - 700 - 50 * i,
  }));
  const ask = { history, future: [{ laps: 20 }, { laps: 15 }], seed: 3, draws: 50 };

  it("for a best lap the same of the bests as for a usual lap of the medians", () => {
    const ofBests = history.map((past) => ({ ...past, medianMs: past.bestMs }));
    expect(futureFigures(ask, "best")).toEqual(futureFigures({ ...ask, history: ofBests }, "median"));
    expect(futureFigures(ask, "best")).not.toEqual(futureFigures(ask, "median"));
  });

  it("are no sessions where none are planned", () => {
    const { future: _, ...without } = ask;
    expect(futureFigures(without, "median")).toEqual({ known: true, value: [] });
  });

  it("names what is no number", () => {
    expect(() => futureFigures({ ...ask, seed: Number.NaN }, "best")).toThrow(/^seed is NaN/);
    expect(() => futureFigures({ ...ask, future: [{ laps: Number.NaN }] }, "best")).toThrow(
      /future\[0\]\.laps/,
    );
  });
});
