import { describe, expect, it } from "vitest";
import { factorGroups } from "#stats";
import { aRun } from "../someRows.ts";
import { aDigest, aDigestOf, lapsAbout } from "./manySessions.ts";

const noLevel = () => 0;

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

  it("has the usual lap of what was typed in tenths in tenths", () => {
    const laps = (decimals: number) =>
      [84_000, 84_100, 84_200, 84_300, 84_400].map((ms) => ({ ms, decimals }));
    const typed = (day: number, decimals: number) =>
      aDigestOf(day, [aRun(1, laps(decimals), { sessionId: `session ${day}`, tyres: "hard" })]);
    const { groups } = factorGroups([typed(0, 1), typed(1, 1), typed(2, 3)], "tyres", noLevel);
    expect(groups[0]?.usual).toEqual({ ms: 84_200, decimals: 1 });
  });

  it("does not take learning over the weeks for a better set-up", () => {
    const level = (day: number) => 86_000 - 100 * day;
    const digests = Array.from({ length: 12 }, (_, day) =>
      aDigest(day, lapsAbout(level(day), 8, day), { setup: day < 6 ? "base" : "soft rear" }),
    );
    const dayOf = new Map(digests.map(({ sessionId }, day) => [sessionId, day]));
    const { groups } = factorGroups(digests, "setup", (id) => level(dayOf.get(id) ?? 0));
    const [base, soft] = groups;
    expect((base?.usual?.ms ?? 0) - (soft?.usual?.ms ?? 0)).toBeGreaterThan(400);
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
