import { describe, expect, it } from "vitest";
import { known, unknown } from "#domain";
import type { RaceDistance } from "#stats";
import {
  fuelCaution,
  sayAhead,
  sayCleanRun,
  sayFuel,
  sayFuelLaps,
  sayLongRun,
  sayLongRunMeaning,
  sayRaceLength,
  sayRaceRests,
} from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const distance = (fields: Partial<RaceDistance> = {}): RaceDistance => ({
  ...{ low: 1_670_900, mid: 1_685_400, high: 1_703_100 },
  laps: { low: 20, mid: 20, high: 20 },
  cleanChance: 0.14,
  mistakes: { share: 0.1, low: 0.06, high: 0.17 },
  likely: [],
  aheadChance: undefined,
  ...fields,
});

describe("a race in words", () => {
  it("of laps tells its time in whole seconds, the range outwards", () =>
    expect(sayRaceLength(distance(), { count: 20 })).toBe(
      "20 laps take about 28:05. 16 races in 20 take between 27:50 and 28:24.",
    ));

  it("of minutes tells its laps, and when it is over", () => {
    const of = (low: number, high: number) => distance({ laps: { low, mid: 22, high }, mid: 1_841_000 });
    expect(sayRaceLength(of(21, 22), { minutes: 30 })).toBe(
      "30 minutes hold about 22 laps, over at about 30:41. 16 races in 20 hold between 21 and 22 laps.",
    );
    expect(sayRaceLength(of(22, 22), { minutes: 30 })).toMatch(/16 races in 20 hold 22 laps\.$/);
  });

  it("tells the chance of a clean one with the mistakes to be expected", () => {
    // A tenth of 20 laps; 6 % and 17 % of them, outwards.
    expect(sayCleanRun(distance())).toBe(
      "All 20 laps clean: unlikely, 3 chances in 20. So far such a distance brings about 2 mistakes of your own, very likely between 1 and 4.",
    );
    expect(sayAhead(0.74, 84_500)).toBe("A mean lap under 1:24.500: likely, 15 chances in 20.");
  });

  it("says what it rests on, and what is not in it", () => {
    expect(sayRaceRests({ kind: "race", runs: 1, laps: 12 })).toBe(
      "From 12 laps of your last race run, mistakes included.",
    );
    expect(sayRaceRests({ kind: "race", runs: 2, laps: 22, isMoved: true })).toBe(
      "From 22 laps of your last 2 race runs, mistakes included, their times moved by as much as your level has since.",
    );
    expect(sayRaceRests({ kind: "pace", runs: 6, laps: 48 })).toBe(
      "From 48 laps of your last 6 pace runs, mistakes included. They are no race laps: traffic, the start and driving against others are not in it.",
    );
  });
});

describe("fuel in words", () => {
  it("is never rounded to less than is needed", () => {
    expect(sayFuel(52, { laps: 20, perLap: 2.4, reserve: 4 })).toBe(
      "Take 52.0 l: 20 laps of 2.40 l, and 4.0 l in reserve.",
    );
    expect(sayFuel(47.01, { laps: 20, perLap: 2.3505, reserve: 0 })).toBe(
      "Take 47.1 l: 20 laps of 2.35 l, and nothing in reserve.",
    );
    expectWellFormed(fuelCaution);
    expect(sayFuelLaps(22)).toBe("Reckoned with 22 laps: 18 races in 20 hold no more.");
  });
});

describe("the pace over a long run in words", () => {
  const trend = (msPerLap: number, low: number, high: number) =>
    known({ msPerLap, low, high, runs: 7, longest: 15 });

  it("is told a lap and over the race, no further than runs went", () => {
    expect(sayLongRun(trend(20, 8, 31), 10)).toBe(
      "Slower by 0.020 s a lap through a run, very likely at least 0.008 s, in 7 runs of up to 15 laps: about 0.18 s from the first lap to lap 10.",
    );
    expect(sayLongRun(trend(-20, -31, -8), 40)).toMatch(/^Faster by .* about 0\.28 s .* to lap 15\.$/);
    expect(sayLongRunMeaning(trend(20, 8, 31), 40)).toMatch(/The longest of these runs had 15 laps/);
    expect(sayLongRunMeaning(trend(20, 8, 31), 15)).not.toMatch(/longest/);
  });

  it("claims no direction that its interval does not have", () => {
    expect(sayLongRun(trend(4, -6, 13), 20)).toBe(
      "Not clearly faster or slower through a run: between 0.006 s faster and 0.013 s slower a lap, in 7 runs of up to 15 laps.",
    );
    const one = known({ msPerLap: 4, low: -6, high: 13, runs: 1, longest: 12 });
    expect(sayLongRun(one, 20)).toMatch(/ in one run of 12 laps\.$/);
    expect(sayLongRun(trend(0, 0, 0), 20)).toMatch(/^The same pace through a run/);
    expect(sayLongRun(unknown({ needs: 6, of: "clean lap", has: 4 }), 20)).toBe(
      "Not enough clean laps yet: 4 of 6 in one run.",
    );
  });
});
