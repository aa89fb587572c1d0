import { describe, expect, it } from "vitest";
import { signedRankTest, sittingThirds } from "#stats";
import { aDigest, lapsAbout } from "../period/manySessions.ts";

describe("late laps against early ones", () => {
  const evening = (day: number, slower: number) =>
    aDigest(day, [
      90_000,
      90_000,
      90_000,
      ...Array.from({ length: 9 }, (_, lap) => 84_000 + (lap >= 6 ? slower : 0) + day),
    ]);

  it("is the signed-rank test of each session's last third against its first, warm-up laps left out", () => {
    const days = [100, 120, 90, 110, 130, 105];
    const found = sittingThirds(days.map((slower, day) => evening(day, slower)));
    const test = signedRankTest(days, 0.9);
    expect(found).toEqual({
      known: true,
      value: { estimate: test?.estimate, low: test?.low, high: test?.high, sessions: 6, sessionsLeftOut: 0 },
    });
    expect(test?.low).toBeGreaterThan(0);
  });

  it("leaves out short sessions and counts them, and needs five long ones", () => {
    const short = aDigest(9, lapsAbout(84_000, 11, 9));
    expect(sittingThirds([1, 2, 3, 4].map((day) => evening(day, 50)).concat(short))).toEqual({
      known: false,
      reason: { needs: 5, of: "session", each: { needs: 12, of: "pace lap" }, has: 4 },
    });
    const enough = sittingThirds([1, 2, 3, 4, 5].map((day) => evening(day, 50)).concat(short));
    expect(enough).toMatchObject({ value: { sessions: 5, sessionsLeftOut: 1 } });
  });

  it("of a session of twelve pace laps, of which nine are left, takes the medians of three and three", () => {
    const twelve = [
      99_000, 99_000, 99_000, 84_000, 84_900, 84_100, 85_000, 85_000, 85_000, 84_600, 84_200, 99_000,
    ];
    const found = sittingThirds([0, 1, 2, 3, 4].map((day) => aDigest(day, twelve)));
    expect(found).toMatchObject({ value: { estimate: 84_600 - 84_100, sessions: 5 } });
    const even = sittingThirds(
      [0, 1, 2, 3, 4].map((day) => aDigest(day, new Array<number>(12).fill(84_000))),
    );
    expect(even).toMatchObject({ value: { estimate: 0, low: 0, high: 0, sessions: 5, sessionsLeftOut: 0 } });
  });

  it("looks at the latest two hundred sessions", () => {
    const many = Array.from({ length: 205 }, (_, day) => evening(day, day < 5 ? 50_000 : 100));
    expect(sittingThirds(many)).toMatchObject({
      value: { estimate: 100, low: 100, high: 100, sessions: 200, sessionsLeftOut: 5 },
    });
  });
});
