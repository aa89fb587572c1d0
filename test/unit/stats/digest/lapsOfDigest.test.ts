import { describe, expect, it } from "vitest";
import { isDrivenSession } from "#stats";
import {
  accountLaps,
  inSet,
  type SetOfLaps,
  sectorsOf,
  timesOf,
} from "../../../../src/stats/digest/lapsOfDigest.ts";
import { aDigest, aDigestOf } from "../period/manySessions.ts";
import { aRun, type Told } from "../someRows.ts";

const untidy = () =>
  aDigestOf(0, [
    aRun(1, [[95_000, "out"], 84_000, [89_000, "off"], [undefined, "spin"], [83_000, "cut"]]),
    aRun(2, [{ ms: 80_000, isNotBest: true }, 84_100]),
    aRun(3, [91_000], { surface: "wet" }),
    aRun(4, [86_000, [92_000, "off"]], { effort: "easy" }),
    aRun(5, [88_000], { kind: "drill" }),
    aRun(6, [85_000, [99_000, "in"]], { kind: "race" }),
  ]);

describe("sets of laps", () => {
  it.each<[SetOfLaps, number[]]>([
    ["timed", [84_000, 89_000, 83_000, 80_000, 84_100, 91_000, 86_000, 92_000, 88_000, 85_000]],
    ["bests", [84_000, 84_100, 91_000, 86_000, 88_000, 85_000]],
    ["pace", [84_000, 80_000, 84_100]],
    ["paceBests", [84_000, 84_100]],
    ["practice", [84_000, 80_000, 84_100, 91_000, 86_000]],
  ])("%s: of an untidy evening these laps", (set, times) => {
    expect([...timesOf([untidy()], set)]).toEqual(times);
    const isIn = inSet(untidy(), set);
    expect([...untidy().times].filter((_, lap) => isIn(lap))).toEqual(times);
  });

  it("are of all sessions one after the other", () => {
    const digests = [aDigest(0, [84_000, [90_000, "off"]]), aDigest(1, []), aDigest(2, [83_000, 83_500])];
    expect([...timesOf(digests, "pace")]).toEqual([84_000, 83_000, 83_500]);
    expect([...timesOf([], "pace")]).toEqual([]);
  });
});

describe("the laps for a time account", () => {
  it("bear their place, and whether they were taken back as a best or confirmed as odd", () => {
    const laps: Told[] = [
      84_000,
      [undefined, "off"],
      { ms: 80_000, isNotBest: true },
      { ms: 99_000, isOdd: true },
    ];
    expect(accountLaps(aDigest(0, laps))).toEqual([
      { ms: 84_000, place: "pace", isNotBest: false, isOdd: false },
      { ms: undefined, place: "noTime", isNotBest: false, isOdd: false },
      { ms: 80_000, place: "pace", isNotBest: true, isOdd: false },
      { ms: 99_000, place: "pace", isNotBest: false, isOdd: true },
    ]);
    expect(accountLaps(aDigest(0, [84_000]))).toMatchObject([{ isOdd: false }]);
    expect(accountLaps(aDigest(0, []))).toEqual([]);
  });
});

describe("sector times", () => {
  const three = (first: number): Told => ({ ms: first + 50_000, sectors: [first, 20_000, 30_000] });
  const two: Told = { ms: 84_000, sectors: [30_000, 54_000] };

  it("are those of the laps that have as many as the latest session with any", () => {
    const digests = [
      aDigest(0, [two]),
      aDigest(1, [three(34_000), 84_500, three(34_200)]),
      aDigest(2, [84_000]),
    ];
    expect(sectorsOf(digests, "pace")).toEqual([
      [34_000, 20_000, 30_000],
      [34_200, 20_000, 30_000],
    ]);
    expect(sectorsOf(digests.toReversed(), "pace")).toEqual([[30_000, 54_000]]);
  });

  it("are those of the laps of the set", () => {
    const digest = aDigestOf(0, [aRun(1, [three(33_000)], { kind: "drill" }), aRun(2, [three(34_000)])]);
    expect(sectorsOf([digest], "pace")).toEqual([[34_000, 20_000, 30_000]]);
    expect(sectorsOf([digest], "bests")).toHaveLength(2);
  });

  it("are none where none were written", () => {
    expect(sectorsOf([aDigest(0, [84_000, 84_100])], "pace")).toEqual([]);
    expect(sectorsOf([], "pace")).toEqual([]);
  });
});

describe("a session that counts as one", () => {
  it("has a lap of the driver's own, written down or not", () => {
    expect(isDrivenSession(aDigest(0, [84_000]))).toBe(true);
    expect(isDrivenSession(aDigest(0, [], { summary: { laps: 1 } }))).toBe(true);
    expect(isDrivenSession(aDigest(0, []))).toBe(false);
    expect(isDrivenSession(aDigest(0, [84_000], { guest: "Ida" }))).toBe(false);
  });
});
