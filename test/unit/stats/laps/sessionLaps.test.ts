import { describe, expect, it } from "vitest";
import type { Run } from "#domain";
import { placedRun, sessionLaps } from "../../../../src/stats/laps/sessionLaps.ts";
import { aRun, choices, type Told } from "../someRows.ts";

const startedAt = 1_000_000;
const lapsOf = (runs: readonly Run[], with_ = choices) => sessionLaps({ startedAt }, runs, with_);

describe("the laps of a session", () => {
  it("stand in the order of their runs, of two runs of one number in that of their ids", () => {
    const runs = [
      aRun(3, [83_000]),
      aRun(1, [81_000], { id: "a" }),
      aRun(2, [82_200], { id: "y" }),
      aRun(2, [82_100], { id: "x" }),
    ];
    for (const given of [runs, runs.toReversed()])
      expect(lapsOf(given).laps.map(({ lap }) => lap.ms)).toEqual([81_000, 82_100, 82_200, 83_000]);
  });

  it("know their run among the driver's own and their place in it", () => {
    const { laps, runs } = lapsOf([
      aRun(1, [70_000], { guest: "Ida" }),
      aRun(2, [84_000, 84_100]),
      aRun(3, []),
      aRun(4, [85_000]),
    ]);
    expect(laps.map(({ run, index }) => [run, index])).toEqual([
      [0, 0],
      [0, 1],
      [2, 0],
    ]);
    expect(runs.map(({ n }) => n)).toEqual([2, 3, 4]);
  });

  it("come one after the other in time, a lap without a time taking none, and a guest's laps neither", () => {
    const { laps } = lapsOf([
      aRun(1, [84_000, [undefined, "off"], 85_000]),
      aRun(2, [90_000], { guest: "" }),
      aRun(3, []),
      aRun(4, [86_000]),
    ]);
    expect(laps.map(({ at }) => at - startedAt)).toEqual([84_000, 84_000, 169_000, 255_000]);
  });

  it("count in their places, and the laps of guests apart", () => {
    const sorted = lapsOf(
      [
        aRun(1, [[95_000, "out"], 84_000, 84_100, [89_000, "spin"]]),
        aRun(2, [84_000, 84_100], { guest: "Ida", lapsDriven: 5 }),
        aRun(3, [84_000], { guest: "Ida" }),
        aRun(4, [84_200], { lapsDriven: 3 }),
        aRun(5, [91_000], { surface: "damp" }),
      ],
      { ...choices, settlingLaps: 2 },
    );
    expect(sorted.guestLaps).toBe(6);
    expect(sorted.counts).toMatchObject({
      outOrIn: 1,
      settling: 1,
      pace: 1,
      mistake: 1,
      partly: 1,
      wet: 1,
      notWritten: 2,
      driven: 8,
    });
  });
});

describe("what the laps of a session add up to", () => {
  it("has the mistakes that were written, or the more that a summary tells of", () => {
    const written: Told[] = [84_000, [89_000, "off"], [undefined, "contact"]];
    const summary = (off: number) => ({ summary: { laps: 10, off } });
    expect(lapsOf([aRun(1, written)]).mistakes).toBe(2);
    expect(lapsOf([aRun(1, written, summary(5))]).mistakes).toBe(5);
    expect(lapsOf([aRun(1, written, summary(1))]).mistakes).toBe(2);
    expect(lapsOf([aRun(1, written), aRun(2, [], summary(3)), aRun(3, [84_000])]).mistakes).toBe(5);
  });

  it("takes timed and clean laps from runs written lap by lap, and no out lap", () => {
    const laps: Told[] = [[95_000, "out"], 84_000, [89_000, "off"], [undefined, "spin"], 84_100];
    expect(lapsOf([aRun(1, laps), aRun(2, laps)])).toMatchObject({ timed: 6, clean: 4 });
    expect(lapsOf([aRun(1, laps), aRun(2, laps, { lapsDriven: 9 })])).toMatchObject({ timed: 3, clean: 2 });
  });

  it("counts as practice what was timed and what was not written down", () => {
    const laps: Told[] = [[95_000, "out"], 84_000, [undefined, "off"], [89_000, "off"]];
    expect(lapsOf([aRun(1, laps, { lapsDriven: 9 }), aRun(2, laps)]).timedDriven).toBe(5 + 2 + 2);
  });

  it("is nothing for a session without a run", () => {
    const none = { laps: [], runs: [], guestLaps: 0, mistakes: 0, timedDriven: 0, timed: 0, clean: 0 };
    expect(lapsOf([])).toMatchObject({ ...none, counts: { driven: 0 } });
  });
});

describe("one lap", () => {
  const told = (lap: Told, displayDecimals: 1 | 2 | 3 = 3) =>
    placedRun(aRun(1, [lap]), 4, startedAt, { ...choices, displayDecimals })[0];

  it("is clean and may be a best without a spoiling remark", () => {
    const clean = { isTimed: true, isClean: true, mayBeBest: true, isMistake: false, worth: "best", run: 4 };
    expect(told(84_000)).toMatchObject(clean);
    expect(told({ ms: 84_000, isNotBest: true })).toMatchObject({
      ...clean,
      mayBeBest: false,
      worth: "clean",
    });
  });

  it("is timed and not clean with a mistake, and neither as an out lap or without a time", () => {
    const spoilt = { isTimed: true, isClean: false, mayBeBest: false, isMistake: true, worth: "timed" };
    expect(told([84_000, "off"])).toMatchObject(spoilt);
    expect(told([84_000, "traffic"])).toMatchObject({ ...spoilt, isMistake: false });
    const none = { isTimed: false, isClean: false, mayBeBest: false, worth: "none" };
    expect(told([84_000, "out"])).toMatchObject({ ...none, isMistake: false });
    expect(told([undefined, "off"])).toMatchObject({ ...none, isMistake: true });
  });

  it("is exact as the display of the simulator goes", () => {
    expect([3, 2, 1].map((decimals) => told({ ms: 84_000, decimals })?.isExact)).toEqual([
      true,
      false,
      false,
    ]);
    expect(told({ ms: 84_000, decimals: 2 }, 2)?.isExact).toBe(true);
    expect(told({ ms: 84_000, source: "memory" })?.isExact).toBe(false);
  });
});
