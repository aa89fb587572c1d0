import { describe, expect, it } from "vitest";
import { known, unknown } from "#domain";
import type { CornersReport, CornerWorth, UnusedRoad } from "#stats";
import {
  assumedCornersSay,
  cornerChangeInShort,
  cornerChangeReading,
  cornerChangeTitle,
  cornersInShort,
  cornersTitle,
  cornerWorthReading,
  lapTimesFollowed,
  noAnswerYet,
  sayCornerInRow,
  sayCorners,
  sayOthersFirst,
  sayRange,
  sayRangeInShort,
  sayTooManySeconds,
  sayWhyCorners,
  sayWorth,
  sectorCornersSay,
  unusedSumSays,
} from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const none: CornerWorth["mistakes"] = { counts: [], laps: 84, mistakes: 0, share: undefined, ms: 0 };
const notSeen = unknown({ because: "not seen in a replay" });

function aCorner(fields: Partial<CornerWorth> = {}): CornerWorth {
  return {
    number: 5,
    facts: { corner: { number: 5 }, car: {}, before: {} },
    unused: notSeen,
    mistakes: none,
    change: undefined,
    habits: { reviews: 0, braking: [], throttle: [], offLine: 0 },
    worth: undefined,
    why: [],
    ...fields,
  };
}

const road = (low: number, mid: number, high: number, nothingToGain = false) =>
  known({
    reviewId: "r",
    on: "2026-11-12",
    gaps: { entry: 0.9, exit: 0.9 },
    ms: { low, mid, high },
    speed: { low: 1, mid: 2, high: 3 },
    largest: { at: "exit", metres: 0.9, cars: 0.5 },
    nothingToGain,
    assumed: [],
    isTooSlow: false,
  } as const);
const wrong = (ms: number) => ({ ...none, counts: [{ kind: "off", count: 3 } as const], mistakes: 3, ms });

const both = aCorner({
  unused: road(30, 100, 190),
  mistakes: wrong(150),
  worth: { low: 180, mid: 250, high: 340 },
});

describe("which corner comes first", () => {
  it("is told with what it is worth, or that it cannot be told", () => {
    expect(cornersTitle({ corners: [both], order: [5] })).toBe("Corner 5 first: about 0.25 s a lap");
    const exact = aCorner({ worth: { low: 118, mid: 118, high: 118 }, mistakes: wrong(118) });
    expect(cornersTitle({ corners: [exact], order: [5] })).toBe("Corner 5 first: 0.12 s a lap");
    expect(cornersTitle({ corners: [aCorner()], order: [] })).toBe("Which corner first cannot be told yet");
  });

  it("is told by its mistakes alone where they come to no hundredth of a second", () => {
    const little = aCorner({ worth: { low: 0, mid: 4, high: 4 }, mistakes: wrong(4) });
    expect(cornersTitle({ corners: [little], order: [5] })).toBe("Corner 5 first: most mistakes were there");
    expect(cornerWorthReading(little)).toMatch(/^What they cost a lap cannot be told\./);
    expect(sayCornerInRow(little)).toBe("Corner 5, no seconds known, 3 off");
  });

  it("says what its worth rests on", () => {
    const said = [
      cornerWorthReading(both),
      cornerWorthReading(aCorner({ unused: road(30, 100, 190), worth: { low: 30, mid: 100, high: 190 } })),
      cornerWorthReading(aCorner({ mistakes: wrong(150), worth: { low: 150, mid: 150, high: 150 } })),
      cornerWorthReading(
        aCorner({
          unused: road(0, 0, 0, true),
          mistakes: wrong(150),
          worth: { low: 150, mid: 150, high: 150 },
        }),
      ),
    ];
    expect(said).toEqual([
      "Between 0.18 and 0.34 s: road left unused about 0.10 s, mistakes 0.15 s.",
      "Between 0.03 and 0.19 s, an estimate from the road left unused.",
      "That is what mistakes there have cost. Its line has not been looked at in a replay.",
      "That is what mistakes there have cost; its line gives nothing away that can be told.",
    ]);
    for (const sentence of said) expectWellFormed(sentence);
  });

  it("says which others it may as well be", () => {
    const other = (number: number, high: number) => aCorner({ number, worth: { low: 10, mid: 100, high } });
    const say = (...others: CornerWorth[]) => sayOthersFirst({ corners: [both, ...others], order: [5] });
    expect(say(other(8, 330), other(9, 240), other(11, 250))).toBe(
      "It may as well be corner 8 or 11: their ranges reach as far.",
    );
    expect(say(other(8, 330))).toBe("It may as well be corner 8: its range reaches as far.");
    expect(say(other(9, 240))).toBeUndefined();
  });

  it("on other screens has no seconds where the corners come to more than pace costs", () => {
    const report = { corners: [both], order: [5], unusedMs: { low: 30, mid: 100, high: 190 } };
    expect(cornersInShort({ ...report, paceMs: 310 })).toBe("Corner 5 first: about 0.25 s a lap");
    expect(cornersInShort({ ...report, paceMs: undefined })).toBe("Corner 5 first: about 0.25 s a lap");
    expect(cornersInShort({ ...report, paceMs: 20 })).toBe("Corner 5 first");
    expect(sayTooManySeconds({ ...report, paceMs: 310 })).toBeUndefined();
    expect(sayTooManySeconds({ ...report, paceMs: 20 })).toMatch(/^Less than that is to be gained/);
  });

  it("gives the reasons in one sentence", () => {
    expect(
      sayWhyCorners(
        [
          { why: "straight after", after: "long", isAssumed: true },
          { why: "mistakes", mistakes: 4, laps: 84 },
          { why: "largest gap", at: "exit", metres: 0.9 },
          { why: "last of its chain" },
          { why: "sector", sector: 2 },
        ],
        1.8,
      ),
    ).toBe(
      "A long straight follows; 4 of 84 laps had an off, a spin or a contact there; half a car left at exit (0.9 m); it ends a chain of corners, so its speed is carried on; it lies in sector 2, which holds most time.",
    );
    expect(sayWhyCorners([], 1.8)).toBe("");
  });

  it("says what would tell, while nothing does", () => {
    expect(noAnswerYet({ corners: [aCorner()], reviews: [] })).toMatch(/^Look at three corners in a replay/);
    expect(noAnswerYet({ corners: [aCorner({ mistakes: wrong(0) })], reviews: [] })).toMatch(
      /^What the mistakes cost needs a session with five pace laps/,
    );
    expect(noAnswerYet({ corners: [aCorner(), aCorner({ mistakes: wrong(0) })], reviews: [] })).toBe(
      "What the mistakes cost needs a session with five pace laps. Look at three corners in a replay: it takes a minute. From the seat every line looks good: half a car’s width missed at a kerb is seen only from outside.",
    );
    expect(noAnswerYet({ corners: [], reviews: [{ id: "r", on: "2026-11-12", corners: [5] }] })).toMatch(
      /^Nothing that can be told is given away/,
    );
  });
});

it("a range is rounded outwards, and one from nothing up is told by its end", () => {
  expect(sayRange({ low: 118, high: 461 })).toBe("between 0.11 and 0.47 s");
  expect(sayRange({ low: 4, high: 180 })).toBe("up to 0.18 s");
  expect(sayRange({ low: 150, high: 150 })).toBe("0.15 s");
  expect(
    [
      { low: 118, high: 461 },
      { low: 4, high: 180 },
    ].map(sayRangeInShort),
  ).toEqual(["0.11 to 0.47 s", "up to 0.18 s"]);
  expect(sayWorth({ worth: undefined })).toBe("not known");
});

it("a corner of the row is told with its name, its seconds and all that was noted there", () => {
  const noted = [{ kind: "off", count: 3 } as const, { kind: "spin", count: 1 } as const];
  const named = { ...both, name: "Sluice", mistakes: { ...wrong(150), counts: noted } };
  expect(sayCornerInRow(named)).toBe("Corner 5 Sluice, about 0.25 s a lap, 3 off, 1 spin");
  expect(sayCornerInRow(aCorner())).toBe("Corner 5, no seconds known");
});

it("corners in a row are told by the first and the last", () => {
  expect([[5], [5, 6], [5, 6, 7, 8], [2, 5, 6, 7, 11]].map(sayCorners)).toEqual([
    "corner 5",
    "corners 5 and 6",
    "corners 5 to 8",
    "corners 2, 5 to 7 and 11",
  ]);
});

describe("what became of the road left unused", () => {
  const change = (low: number, mid: number, high: number) => ({
    from: "2026-10-20",
    to: "2026-11-12",
    ms: { low, mid, high },
  });
  const today = "2026-11-22";

  it("is less, more, or may be the same", () => {
    const titles = [change(-310, -140, -20), change(20, 90, 200), change(-310, -140, 180)].map((one) =>
      cornerChangeTitle(one, "corners 5 and 8", today),
    );
    expect(titles).toEqual([
      "0.14 s a lap less given away at corners 5 and 8 since 20 Oct",
      "0.09 s a lap more given away at corners 5 and 8 since 20 Oct",
      "Road left unused at corners 5 and 8: not clearly less or more since 20 Oct",
    ]);
    const short = [change(-310, -140, -20), change(20, 90, 200), change(-310, -140, 180)];
    expect(short.map((one) => cornerChangeInShort(one, today))).toEqual([
      "0.14 s less of road left unused since 20 Oct",
      "0.09 s more of road left unused since 20 Oct",
      "road left unused not clearly less or more since 20 Oct",
    ]);
  });

  it("has its range behind it, and how far a gap is misjudged", () => {
    const misjudged = ", each gap being misjudged by up to a quarter of a car.";
    expect(
      [change(-310, -140, -25), change(25, 90, 200), change(-310, -140, 181), change(0, 0, 0)].map(
        cornerChangeReading,
      ),
    ).toEqual([
      `Between 0.02 and 0.31 s less${misjudged}`,
      `Between 0.02 and 0.20 s more${misjudged}`,
      `Between 0.31 s less and 0.19 s more${misjudged}`,
      "The same gaps as then.",
    ]);
  });

  it("is held against the lap times, which claim nothing without enough sessions", () => {
    expect(
      lapTimesFollowed({ to: "2026-11-12", level: unknown({ needs: 4, of: "session", has: 2 }) }, today),
    ).toBe("Lap times: not enough sessions yet: 2 of 4.");
  });

  it("says by how much where they followed", () => {
    const level = known({
      from: "2026-10-20",
      to: "2026-11-12",
      change: -420,
      low: -700,
      high: -140,
      chanceFaster: 0.99,
      sessions: 6,
    } as const);
    const said = lapTimesFollowed({ to: "2026-11-12", level }, today);
    expect(said).toBe(
      "Lap times: usual lap faster by 0.42 s in the 3 weeks to 12 Nov, very likely at least 0.14 s.",
    );
    expectWellFormed(said);
  });
});

it("the sum of all corners is held against what pace costs", () => {
  const unusedMs = { low: 140, mid: 440, high: 820 };
  const sum =
    "All corners looked at together: about 0.44 s a lap of road left unused, between 0.14 and 0.82 s.";
  expect(unusedSumSays({ unusedMs, paceMs: 900 })).toBe(sum);
  expect(unusedSumSays({ unusedMs, paceMs: undefined })).toBe(sum);
  expect(unusedSumSays({ unusedMs, paceMs: 310 })).toBe(
    `${sum} That is more than the 0.31 s that pace costs in the time account of the same sessions, so the seconds are too many: compare corners by them.`,
  );
  expect(unusedSumSays({ unusedMs, paceMs: 0 })).toBe(
    `${sum} That is more than pace costs in the time account of the same sessions, so the seconds are too many: compare corners by them.`,
  );
  expect(unusedSumSays({ unusedMs, paceMs: 440 })).toBe(sum);
  expect(unusedSumSays({ unusedMs: undefined, paceMs: 310 })).toBeUndefined();
  expect(unusedSumSays({ unusedMs: { low: 0, mid: 0, high: 60 }, paceMs: 310 })).toBeUndefined();
});

it("says which corners rest on assumptions, and whether the car does", () => {
  const looked = (number: number, assumed: UnusedRoad["assumed"]) =>
    aCorner({ number, unused: known({ ...road(30, 100, 190).value, assumed }) });
  const rest = "The ranges hold what is plausible; each corner says how far it hangs on that.";
  expect(
    assumedCornersSay({
      corners: [looked(5, ["radius", "grip"]), looked(8, ["after"]), looked(9, ["grip"])],
    }),
  ).toBe(`Assumed in part: the shape of corners 5 and 8 and the car’s grip. ${rest}`);
  expect(assumedCornersSay({ corners: [looked(5, ["grip"]), aCorner()] })).toBe(
    `Assumed in part: the car’s grip. ${rest}`,
  );
  expect(assumedCornersSay({ corners: [looked(5, ["drive"]), aCorner()] })).toBeUndefined();
});

it("the sector with most time is told with its corners", () => {
  const say = (corners: number[]): CornersReport["sector"] => ({ sector: 2, ms: 300, corners });
  expect(sectorCornersSay({ sector: say([5, 6, 7, 8]) })).toMatch(/best sectors: corners 5 to 8\.$/);
  expect(sectorCornersSay({ sector: say([]) })).toMatch(/^Sector 2 holds most time .*best sectors\.$/);
  expect(sectorCornersSay({ sector: undefined })).toBeUndefined();
});
