import { describe, expect, it } from "vitest";
import { known, type Target, unknown } from "#domain";
import { type CornersReport, comboStanding, whereToFind } from "#stats";
import { aDigest } from "../period/manySessions.ts";

const today = "2026-01-20";
const aTarget = (fields: Partial<Target>): Target => ({
  ...{ id: "target", createdAt: 0, updatedAt: 0, comboId: "combo", setAt: 0, setOn: "2026-01-01" },
  ...{ kind: "best", value: 83_700, by: "2026-02-01" },
  ...fields,
});
/** Laps of two sectors: usually 30.200 and 54.400, at best 30.000 and 54.000. */
const sectors = [
  [30_000, 54_400],
  [30_200, 54_000],
  [30_200, 54_400],
  [30_300, 54_500],
  [30_400, 54_600],
] as const;
const page = [
  // An older session was another story.
  aDigest(
    0,
    sectors.map(([first, second]) => ({ ms: first + second + 2000, sectors: [first, second + 2000] })),
  ),
  aDigest(
    3,
    sectors.map((both) => ({ ms: both[0] + both[1], sectors: [...both] })),
  ),
  // The last one without sectors.
  aDigest(5, [84_900, 84_900, 84_900, 84_900, 84_900]),
];
const corner = (number: number, mid: number, nothingToGain = false) => ({
  number,
  unused: known({ ms: { low: mid, mid, high: mid }, nothingToGain }),
});
const report = {
  corners: [
    corner(1, 40),
    { number: 2, unused: unknown({ because: "not seen in a replay" }) },
    corner(3, 200),
    corner(4, 900, true),
    corner(5, 300),
  ],
} as unknown as CornersReport;
const ask = (target: Partial<Target>, digests = page) =>
  whereToFind({
    states: comboStanding({ comboId: "combo", digests, pages: [], targets: [aTarget(target)], today })
      .targets,
    page: digests,
    report,
  });

describe("where the time that a target needs could come from", () => {
  it("by hand: from the PB on, over the sectors of the last session that has them", () => {
    // The PB is 84.200, half a second behind; the sectors hold 0.2 and 0.4 s.
    const [found] = ask({});
    expect(found).toMatchObject({ targetId: "target", gain: 500 });
    expect(found?.sectors).toEqual(known({ shares: [167, 333], covered: 500 }));
  });

  it("shares by length what the best sectors do not hold, and still adds up", () => {
    const [found] = ask({ value: 83_000 });
    if (!found?.sectors.known) throw new Error("the sectors are known");
    const { shares, covered } = found.sectors.value;
    expect(covered).toBe(600);
    expect(shares.reduce((sum, ms) => sum + ms, 0)).toBe(1200);
    // Of the other 600 the sectors take 30.2 and 54.4 parts.
    expect(shares).toEqual([200 + 214, 400 + 386]);
  });

  it("names the corners with road left unused, the most first, as many as it takes", () => {
    expect(ask({})[0]?.corners).toEqual([
      { number: 5, ms: 300 },
      { number: 3, ms: 200 },
    ]);
    expect(ask({ value: 83_000 })[0]?.corners.map(({ number }) => number)).toEqual([5, 3, 1]);
    expect(ask({ value: 84_000 })[0]?.corners.map(({ number }) => number)).toEqual([5]);
  });

  it("says nothing of what is reached or missed, or is no lap time", () => {
    expect(ask({ value: 84_300 })).toEqual([]);
    expect(ask({ by: "2026-01-10" })).toEqual([]);
    expect(ask({ kind: "scatter", value: 1 })).toEqual([]);
    expect(ask({}, [])).toEqual([]);
  });

  it("gives the reason where no session has sectors", () => {
    expect(ask({}, page.slice(2))[0]?.sectors).toEqual(
      unknown({ needs: 5, of: "pace lap with sectors", has: 0 }),
    );
  });
});
