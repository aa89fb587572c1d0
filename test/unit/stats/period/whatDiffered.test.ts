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

  it("by hand: in the same five sessions, and from other sessions each against its level", () => {
    const same = factorGroups(
      [-200, -210, -190, -220, -180].map((gap, day) => both(day, gap)),
      "tyres",
      noLevel,
    );
    // Medians of 84,015 and 84,010 and the gap: Hodges–Lehmann of the gaps less 5.
    expect(same.groups[1]?.difference).toMatchObject({ value: { estimate: -205 } });
    const alone = (day: number, tyres: string, ms: number) => aDigest(day, [ms, ms, ms], { tyres });
    const digests = [0, 1, 2, 3].flatMap((day) => [
      alone(day, "hard", 85_000),
      alone(day + 10, "soft", 84_700),
      alone(day + 20, "hard", 85_000),
    ]);
    const { groups } = factorGroups(digests, "tyres", (id) =>
      id.length > "session 9".length ? 84_900 : 85_000,
    );
    expect(groups.map(({ value, usual }) => [value, usual?.ms])).toEqual([
      ["hard", 85_000],
      ["soft", 84_700],
    ]);
    // Half of the hard sessions lie at their level, half 100 ms over it, the soft ones 200 ms under it.
    expect(groups[1]?.difference).toMatchObject({
      value: { estimate: -250, basis: "other sessions", sessions: 12 },
    });
    expect(groups[0]?.difference).toEqual({ known: false, reason: { because: "the most driven" } });
  });

  it("needs four sessions of each where fewer than five are the same", () => {
    const pairs = [0, 1, 2, 3].map((day) => both(day, -200));
    expect(factorGroups(pairs, "tyres", noLevel).groups[1]?.difference).toMatchObject({
      value: { basis: "other sessions", sessions: 8 },
    });
    expect(factorGroups(pairs.slice(1), "tyres", noLevel).groups[1]?.difference).toMatchObject({
      reason: { has: 3 },
    });
  });

  it("counts the sessions of the rarer kind", () => {
    const hard = [0, 1, 2, 3, 4].map((day) => aDigest(day, [84_000, 84_000, 84_000], { tyres: "hard" }));
    const soft = [5, 6].map((day) => aDigest(day, [84_000, 84_000, 84_000], { tyres: "soft" }));
    expect(factorGroups([...hard, ...soft], "tyres", noLevel).groups[1]?.difference).toMatchObject({
      reason: { needs: 4, has: 2 },
    });
  });

  it("has the most driven first, of as many laps by name, and sessions of three laps at least", () => {
    const digests = [
      aDigest(0, [84_000, 84_000], { tyres: "soft" }),
      aDigest(1, [84_000, 84_000, 84_000], { tyres: "medium" }),
      aDigest(2, [84_000], { tyres: "soft" }),
      aDigest(3, [84_000, 84_000, 84_000, [90_000, "off"]], { tyres: "hard" }),
      aDigest(4, [84_000, 84_000]),
    ];
    const { groups } = factorGroups(digests, "tyres", noLevel);
    expect(groups.map(({ value, laps, sessions, usual }) => [value, laps, sessions, usual?.ms])).toEqual([
      ["hard", 3, 1, 84_000],
      ["medium", 3, 1, 84_000],
      ["soft", 3, 0, undefined],
    ]);
    expect(factorGroups([], "tyres", noLevel)).toEqual({ factor: "tyres", groups: [] });
  });

  it("looks at the latest two hundred sessions", () => {
    const digests = Array.from({ length: 201 }, (_, day) =>
      aDigest(day, [84_000], { tyres: day === 0 ? "hard" : "soft" }),
    );
    expect(factorGroups(digests, "tyres", noLevel).groups).toMatchObject([{ value: "soft", laps: 200 }]);
  });

  it.each([
    ["effort", ["brisk", "easy", "full", "learning"]],
    ["surface", ["damp", "dry", "wet"]],
    ["tyres", ["hard"]],
    ["setup", ["low wing"]],
    ["focus", ["free", "race pace"]],
  ] as const)("tells laps apart by %s where nothing else differs", (factor, values) => {
    const noted = { tyres: "hard", setup: "low wing" };
    const digests = [
      aDigest(0, [84_000], { ...noted, effort: "easy" }),
      aDigest(1, [84_000], { ...noted, effort: "learning" }),
      aDigest(2, [84_000], { ...noted, effort: "brisk" }),
      aDigest(3, [84_000], noted, { focus: "race pace" }),
      aDigest(4, [84_000], { ...noted, surface: "damp" }),
      aDigest(5, [84_000], { ...noted, surface: "wet", effort: "brisk" }),
      aDigest(6, [84_000], { ...noted, surface: "wet", effort: "easy" }),
    ];
    const { groups } = factorGroups(digests, factor, noLevel);
    expect(groups.map(({ value }) => value).toSorted()).toEqual(values);
    // Easy laps and laps in the wet are told by their own factor only.
    const laps = groups.reduce((sum, group) => sum + group.laps, 0);
    expect(laps).toBe({ effort: 4, surface: 4, tyres: 2, setup: 2, focus: 2 }[factor]);
  });
});
