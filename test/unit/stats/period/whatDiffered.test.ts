import { describe, expect, it } from "vitest";
import { factorGroups, signedRankTest, sittingThirds } from "#stats";
import { aRun } from "../someRows.ts";
import { aDigest, aDigestOf, lapsAbout } from "./manySessions.ts";

const noLevel = () => 0;

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
});

describe("laps by what they were driven with", () => {
  const both = (day: number, gap: number) =>
    aDigestOf(day, [
      aRun(1, [84_000, 84_010, 84_020, 84_030], { sessionId: `session ${day}`, tyres: "hard" }),
      aRun(2, [84_000 + gap, 84_010 + gap, 84_020 + gap], { sessionId: `session ${day}`, tyres: "soft" }),
    ]);

  it("compares two that were driven in the same sessions with themselves", () => {
    const { groups } = factorGroups(
      [-200, -210, -190, -220, -180].map((gap, day) => both(day, gap)),
      "tyres",
      noLevel,
    );
    expect(groups.map(({ value, laps, sessions }) => [value, laps, sessions])).toEqual([
      ["hard", 20, 5],
      ["soft", 15, 5],
    ]);
    expect(groups[1]?.difference).toMatchObject({
      known: true,
      value: { basis: "same sessions", sessions: 5 },
    });
    const { difference } = groups[1] ?? {};
    if (difference?.known) expect(difference.value.high).toBeLessThan(0);
  });

  it("does not take learning over the weeks for a better set-up", () => {
    const level = (day: number) => 86_000 - 100 * day;
    const digests = Array.from({ length: 12 }, (_, day) =>
      aDigest(day, lapsAbout(level(day), 8, day), { setup: day < 6 ? "base" : "soft rear" }),
    );
    const dayOf = new Map(digests.map(({ sessionId }, day) => [sessionId, day]));
    const { groups } = factorGroups(digests, "setup", (id) => level(dayOf.get(id) ?? 0));
    const [base, soft] = groups;
    expect((base?.usual ?? 0) - (soft?.usual ?? 0)).toBeGreaterThan(400);
    if (!soft?.difference.known) throw new Error("a difference is known");
    expect(soft.difference.value.basis).toBe("other sessions");
    expect(soft.difference.value.low).toBeLessThanOrEqual(0);
    expect(soft.difference.value.high).toBeGreaterThanOrEqual(0);
  });

  it("keeps wet and easy laps out of every factor but their own", () => {
    const wet = aDigest(0, [95_000, 95_000, 95_000], { surface: "wet", tyres: "wet" });
    const dry = aDigest(1, [84_000, 84_000, 84_000], { tyres: "hard" });
    const values = (factor: "surface" | "tyres") =>
      factorGroups([wet, dry], factor, noLevel).groups.map(({ value }) => value);
    expect(values("surface")).toEqual(["dry", "wet"]);
    expect(values("tyres")).toEqual(["hard"]);
  });

  it("says how many sessions are missing", () => {
    const { groups } = factorGroups([both(0, 100), both(1, 100)], "tyres", noLevel);
    expect(groups[1]?.difference).toEqual({
      known: false,
      reason: { needs: 4, of: "session of each kind", each: { needs: 3, of: "clean lap" }, has: 2 },
    });
  });
});
