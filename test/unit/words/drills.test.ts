import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import { type DrillsFollowed, drillWeeks, wilsonInterval } from "#stats";
import { drillReading, drillsFollowedSay, drillTitle } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const counted = (...weeks: readonly (readonly [good: number, tries: number])[]) =>
  drillWeeks(
    weeks.map(([good, tries], week) => ({
      date: `2026-01-${String(5 + 7 * week).padStart(2, "0")}`,
      counts: [{ drill: "traction", corner: 5, good, tries }],
    })),
  )[0] as ReturnType<typeof drillWeeks>[number];

test("a drill is told with its share and what that share may be", () => {
  // By hand from the formula of the score interval with z = 1.645: 0.516 and 0.836.
  expect(drillTitle(counted([4, 10], [10, 10]))).toBe(
    "14 of 20 exits without wheelspin: 70 %, between 51 and 84 %",
  );
});

test("the last week is set against the first, and says when it may be chance", () => {
  expect(drillReading(counted([2, 10], [9, 10]))).toBe(
    "9 of 10 in the last week, 2 of 10 in the first: very likely more.",
  );
  expect(drillReading(counted([9, 10], [5, 10], [2, 10]))).toMatch(
    /^2 of 10 .* 9 of 10 .*: very likely fewer\.$/,
  );
  expect(drillReading(counted([5, 10], [7, 10]))).toMatch(/: the difference may be chance\.$/);
  expect(drillReading(counted([5, 10], [5, 10]))).toMatch(/: the same\.$/);
  expect(drillReading(counted([5, 10]))).toMatch(/^Whether more of them work cannot be told yet/);
});

const followed = (before: readonly [number, number], since: readonly [number, number]): DrillsFollowed => {
  const at = ([mistakes, laps]: readonly [number, number]) => ({
    ...{ mistakes, laps, counts: [], ms: undefined },
    share: wilsonInterval(mistakes, laps, 0.9),
  });
  return {
    from: "2026-11-03",
    before: at(before),
    since: at(since),
    level: unknown({ needs: 2, of: "session", each: { needs: 5, of: "pace lap" }, has: 1 }),
  };
};

test("whether the remarks followed is told from twenty laps on either side", () => {
  const say = (...of: Parameters<typeof followed>) => drillsFollowedSay(followed(...of), "2026-11-29")[0];
  expect(say([20, 60], [2, 60])).toBe(
    "Mistakes there in 20 of 60 laps before 3 Nov, in 2 of 60 after it: very likely fewer.",
  );
  expect(say([2, 60], [20, 60])).toMatch(/: very likely more\.$/);
  expect(say([5, 60], [3, 60])).toMatch(/: the difference may be chance\.$/);
  expect(say([5, 60], [0, 19])).toBe(
    "Whether mistakes there got fewer cannot be told yet: it needs 20 laps before 3 Nov and after it, besides drills; there are 60 and 19.",
  );
});

test("whether the lap times followed is said by the level", () => {
  const [, few] = drillsFollowedSay(followed([5, 60], [3, 60]), "2026-11-29");
  expect(few).toBe("Lap times: not enough sessions with 5 pace laps each yet: 1 of 2.");
  const level = known({
    ...{ change: -200, low: -420, high: 60, chanceFaster: 0.92 },
    ...{ from: "2026-11-05", to: "2026-11-28", sessions: 8 },
  });
  const [remarks = "", times = ""] = drillsFollowedSay(
    { ...followed([5, 60], [3, 60]), level },
    "2026-11-29",
  );
  expect(times).toBe(
    "Lap times: usual lap likely faster by 0.20 s since 5 Nov. All you practised since is in it, not this alone.",
  );
  for (const sentence of [remarks, times]) expectWellFormed(sentence);
});
