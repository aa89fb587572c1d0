import { describe, expect, it } from "vitest";
import type { Target } from "#domain";
import { comboStanding, nextTarget, type SessionDigest } from "#stats";
import { aDigest } from "../period/manySessions.ts";
import { aPage, aSession, type Told } from "../someRows.ts";

const today = "2026-01-16";
const aTarget = (fields: Partial<Target> = {}): Target => ({
  id: "target",
  createdAt: 0,
  updatedAt: 0,
  comboId: "combo",
  kind: "best",
  value: 83_000,
  setAt: aSession(1).startedAt - 1,
  setOn: "2026-01-02",
  by: "2026-01-11",
  ...fields,
});
const standingOf = (digests: readonly SessionDigest[], target: Target, turnedAt?: number) =>
  comboStanding({
    comboId: "combo",
    digests,
    pages: turnedAt === undefined ? [] : [aPage(turnedAt)],
    targets: [target],
    today,
  }).targets[0];

describe("a best lap that was missed", () => {
  const digests = [
    aDigest(0, [83_100]),
    aDigest(1, [83_900, 84_500]),
    aDigest(4, [{ ms: 83_600, decimals: 1 }]),
    aDigest(5, [83_650, [83_020, "off"]]),
    aDigest(8, [[83_010, "off"]]),
    aDigest(10, [83_670]),
    aDigest(12, [83_050]),
  ];

  it("tells the nearest that a session came between its setting and its date, of a time cut short the latest it may have been", () => {
    const state = standingOf(digests, aTarget());
    expect(state?.standing).toEqual({ kind: "missed", reachedOn: undefined });
    expect(state?.closest).toEqual({ value: 83_650, decimals: 3 });
    expect(state?.now).toEqual({ value: 83_050, decimals: 3 });
  });

  it("counts the session of the instant it was set at, and that of its last day", () => {
    const { startedAt } = aSession(5);
    expect(standingOf(digests, aTarget({ setAt: startedAt, by: "2026-01-08" }))?.closest).toMatchObject({
      value: 83_650,
    });
    expect(standingOf(digests, aTarget({ setAt: startedAt + 1 }))?.closest).toMatchObject({ value: 83_670 });
    expect(standingOf(digests, aTarget({ setAt: startedAt + 1, by: "2026-01-10" }))?.closest).toBeUndefined();
  });

  it("is told when it was reached after its date", () => {
    const late = [...digests, aDigest(14, [83_000])];
    expect(standingOf(late, aTarget())?.standing).toEqual({ kind: "missed", reachedOn: "2026-01-15" });
  });

  it("has nothing nearest while it is open, or reached", () => {
    expect(standingOf(digests, aTarget({ by: today }))).toMatchObject({
      standing: { kind: "open", daysLeft: 0 },
      closest: undefined,
    });
    expect(standingOf(digests, aTarget({ value: 83_900 }))).toMatchObject({
      standing: { kind: "reached before" },
      closest: undefined,
    });
  });
});

describe("a usual lap that was missed", () => {
  const five = (ms: number): Told[] => new Array<number>(5).fill(ms);
  const digests = [
    aDigest(0, five(84_000)),
    aDigest(2, five(84_700)),
    aDigest(3, [83_500]),
    aDigest(4, five(83_900)),
    aDigest(5, five(84_600)),
  ];

  it("tells how far the level came, not one good evening under the target", () => {
    const state = standingOf(digests, aTarget({ kind: "median", value: 84_000 }));
    expect(state?.standing.kind).toBe("missed");
    const { value = 0, ...known } = state?.closest ?? {};
    expect(known).toEqual({ decimals: 2, isLevel: true });
    expect(value).toBeGreaterThan(84_000);
    expect(value).toBeLessThan(84_600);
    expect(standingOf(digests.slice(0, 1), aTarget({ kind: "median" }))?.closest).toBeUndefined();
  });

  it("of a mean, a scatter or a share tells the nearest session between its setting and its date", () => {
    const uneven = (day: number, apart: number) =>
      aDigest(day, [84_000, 84_000 + apart, 84_000, 84_000 + apart, [84_000, "off"]]);
    // Four clean laps in a row; scatters of five only. Before it was set, in time twice, after its date.
    const four = [uneven(0, 100), uneven(3, 800), uneven(5, 600), uneven(12, 200)];
    const mean = standingOf(four, aTarget({ kind: "meanOf", laps: 4, value: 80_000 }));
    expect(mean?.closest).toEqual({ value: 84_300, decimals: 3 });
    const share = standingOf(four, aTarget({ kind: "cleanShare", value: 900 }));
    expect(share?.closest).toEqual({ value: 800, decimals: 3 });
    const clean = [400, 900].map((apart, index) =>
      aDigest(3 + index, [84_000, 84_000 + apart, 84_000, 84_000 + apart, 84_000]),
    );
    // Half the mean of squared differences of 400 is 80,000; its root 282.8.
    expect(standingOf(clean, aTarget({ kind: "scatter", value: 1 }))?.closest?.value).toBeCloseTo(282.84, 1);
    expect(standingOf([], aTarget({ kind: "scatter", value: 1 }))?.closest).toBeUndefined();
  });
});

describe("how far a target is reached", () => {
  it("takes a time cut short for the latest it may have been", () => {
    const digests = [aDigest(2, [{ ms: 83_900, decimals: 1 }])];
    expect(standingOf(digests, aTarget({ start: 85_000 }))?.progress).toEqual({
      known: true,
      value: { progress: (85_000 - 83_999) / 2000, left: 999 },
    });
  });

  it("takes a level as it is shown", () => {
    const five = (ms: number): Told[] => new Array<number>(5).fill(ms);
    const digests = [aDigest(0, five(84_000)), aDigest(2, five(84_000)), aDigest(4, five(84_000))];
    const state = standingOf(digests, aTarget({ kind: "median", start: 85_000 }));
    expect(state?.now).toMatchObject({ decimals: 2, isLevel: true });
    const left = (state?.now?.value ?? 0) - 83_000;
    expect(Math.abs(left - 1000)).toBeLessThan(100);
    expect(state?.progress).toEqual({ known: true, value: { progress: (2000 - left) / 2000, left } });
  });

  it("is not known where nothing was driven yet", () => {
    expect(standingOf([], aTarget({ start: 85_000 }))).toMatchObject({
      now: undefined,
      progress: { known: false, reason: { because: "no figure yet" } },
    });
  });
});

describe("a target of an older page", () => {
  it("has no figure on the new one", () => {
    const digests = [aDigest(0, [82_000]), aDigest(2, [83_900]), aDigest(8, [83_000])];
    expect(standingOf(digests, aTarget(), aSession(6).startedAt)).toMatchObject({
      standing: { kind: "older page" },
      now: undefined,
      closest: undefined,
      progress: { known: false },
    });
  });
});

describe("what is true of a combo on a day", () => {
  it("is the same whatever order its sessions are given in", () => {
    const digests = [80_400, 80_300, 80_200].map((ms, day) => aDigest(day, new Array<number>(6).fill(ms)));
    const latest = aTarget({ kind: "cleanShare", value: 900 });
    const spoilt = aDigest(3, [80_000, [80_000, "off"], [80_000, "off"], [80_000, "off"], 80_000]);
    const question = { comboId: "combo", pages: [], targets: [latest], today };
    const standing = comboStanding({ ...question, digests: [...digests, spoilt] });
    expect(comboStanding({ ...question, digests: [spoilt, ...digests.toReversed()] })).toEqual(standing);
    expect(standing.targets[0]?.now).toEqual({ value: 400, decimals: 3 });
    expect(standing.history.map(({ date }) => date)).toEqual(["2026-01-01", "2026-01-02", "2026-01-03"]);
  });

  it("names as the next target the nearest that is open and not archived", () => {
    const targets = [
      aTarget({ id: "archived", by: "2026-01-20", archivedAt: 5 }),
      aTarget({ id: "reached", by: "2026-01-21", value: 84_000 }),
      aTarget({ id: "far", by: "2026-03-01" }),
      aTarget({ id: "near", by: "2026-02-01" }),
      aTarget({ id: "missed" }),
    ];
    const next = (asked: readonly Target[]) =>
      nextTarget(
        comboStanding({ comboId: "combo", digests: [aDigest(2, [83_900])], pages: [], targets: asked, today })
          .targets,
      );
    expect(next(targets)?.id).toBe("near");
    expect(next([])).toBeUndefined();
  });
});
