import { expect, it } from "vitest";
import { sessionDigest } from "#stats";
import { paceRuns } from "../../../../src/stats/verdict/paceRuns.ts";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

const runsOf = (...runs: ReturnType<typeof aRun>[]) => sessionDigest(aSession(0), runs, choices);
const three: Told[] = [84_000, 84_100, 84_200];

it("takes the pace laps of each run on that surface, and leaves runs without one out", () => {
  const digest = runsOf(
    aRun(1, three),
    aRun(2, [
      [90_000, "spin"],
      [91_000, "off"],
    ]),
    aRun(3, three, { surface: "wet" }),
    aRun(4, [[undefined, "off"], 84_300]),
  );
  expect(paceRuns(digest, "dry").map(({ times }) => times)).toEqual([[84_000, 84_100, 84_200], [84_300]]);
  expect(paceRuns(digest, "wet").map(({ times }) => times)).toEqual([[84_000, 84_100, 84_200]]);
  expect(paceRuns(digest, "damp")).toEqual([]);
});

it("takes no run that was driven easily or to learn, wet or dry, and none that is partly written", () => {
  const wet = { surface: "wet" } as const;
  const digest = runsOf(
    aRun(1, three, { ...wet, effort: "easy" }),
    aRun(2, three, { ...wet, effort: "learning" }),
    aRun(3, three, { ...wet, lapsDriven: 9 }),
    aRun(4, [95_000], { ...wet, effort: "brisk" }),
  );
  expect(paceRuns(digest, "wet").map(({ times }) => times)).toEqual([[95_000]]);
});

it("takes clean laps alone of a wet run, and chains those that follow one another with exact times", () => {
  const laps: Told[] = [
    95_000,
    [96_500, "off"],
    95_100,
    [undefined, "off"],
    95_200,
    { ms: 95_300, decimals: 1 },
    95_400,
  ];
  const [run] = paceRuns(runsOf(aRun(1, laps, { surface: "wet" })), "wet");
  expect(run?.times).toEqual([95_000, 95_100, 95_200, 95_300, 95_400]);
  expect(run?.chains).toEqual([
    [95_000, 95_100],
    [95_200, 95_400],
  ]);
});
