import { describe, expect, test } from "vitest";
import type { Corner, CornerReview, Lap, ReviewedCorner, Run } from "#domain";
import { cornerChange, cornerCost, spanOfChanges } from "#physics";
import { type CornersInput, cornersReport, sessionDigest, sessionsForCorners } from "#stats";
import { aPage, aRun, aSession, choices, type Told } from "../someRows.ts";

const five = [84_000, 84_100, 84_200, 84_300, 84_400];
const off = (ms: number, corner: number): Partial<Lap> => ({ ms, remarks: [{ kind: "off", corner }] });

/** Sessions on days of January 2026. */
function evenings(days: Readonly<Record<number, readonly Told[]>>, fields: Partial<Run> = {}) {
  return Object.entries(days).map(([day, laps]) => {
    const session = aSession(Number(day));
    return { session, runs: [aRun(1, laps, { sessionId: session.id, ...fields })] };
  });
}

function aReview(day: number, corners: readonly ReviewedCorner[], fields: Partial<CornerReview> = {}) {
  const { date: on } = aSession(day);
  return { id: `review ${day}`, createdAt: day, updatedAt: day, comboId: "combo", on, corners, ...fields };
}

interface Given {
  readonly driven?: ReturnType<typeof evenings>;
  readonly corners?: readonly Corner[];
  readonly reviews?: readonly CornerReview[];
}

function reportOf({ driven = [], corners = [], reviews = [], ...fields }: Given & Partial<CornersInput>) {
  const digests = driven.map(({ session, runs }) => sessionDigest(session, runs, choices));
  const today = "2026-03-01";
  const { pages = [] } = fields;
  const looked = new Set(sessionsForCorners({ digests, pages, today }).map(({ sessionId }) => sessionId));
  return cornersReport({
    digests,
    sessions: driven.filter(({ session }) => looked.has(session.id)),
    pages,
    targets: [],
    references: [],
    preferences: choices,
    today,
    corners,
    car: {},
    lowestSpeeds: [],
    reviews,
    ...fields,
  });
}
const of = (report: ReturnType<typeof reportOf>, number: number) => {
  const found = report.corners.find((corner) => corner.number === number);
  if (found === undefined) throw new Error(`no corner ${number}`);
  return found;
};

test("nothing known gives nothing", () => {
  expect(reportOf({})).toEqual({
    corners: [],
    order: [],
    reviews: [],
    sessions: 0,
    laps: 0,
    unnamedMs: undefined,
    change: undefined,
    unusedMs: undefined,
    paceMs: undefined,
    sector: undefined,
  });
});

describe("the corners", () => {
  test("are those of the layout and those named in remarks or reviews, in lap order, with their names", () => {
    const report = reportOf({
      corners: [{ number: 5, name: "Sluice" }, { number: 2 }],
      driven: evenings({ 1: [...five, off(90_200, 7)] }),
      reviews: [aReview(1, [{ number: 3, braking: "late" }])],
    });
    expect(report.corners.map(({ number, name }) => [number, name])).toEqual([
      [2, undefined],
      [3, undefined],
      [5, "Sluice"],
      [7, undefined],
    ]);
  });

  test("stand in the order of what they are worth: unused road and mistakes together", () => {
    const report = reportOf({
      driven: evenings({ 1: [...five, off(90_200, 7)] }),
      reviews: [
        aReview(1, [
          { number: 3, exit: 2 },
          { number: 4, exit: 0.5 },
        ]),
      ],
    });
    expect(report.order).toEqual([7, 3, 4]);
    // 6 s lost in one lap of six; such laps are 0.0382 to 0.5025 of all, by Wilson's 90 % interval.
    expect(of(report, 7).worth).toEqual({ low: 229, mid: 1000, high: 3015 });
    const { unused, worth } = of(report, 3);
    expect(unused.known && unused.value.ms).toEqual(worth);
  });

  test("worth both, they are worth the sum", () => {
    const report = reportOf({
      driven: evenings({ 1: [...five, off(90_200, 3)] }),
      reviews: [aReview(1, [{ number: 3, exit: 2 }])],
    });
    const { unused, worth } = of(report, 3);
    if (!unused.known) throw new Error();
    const { low, mid, high } = unused.value.ms;
    expect(worth).toEqual({ low: low + 229, mid: mid + 1000, high: high + 3015 });
  });

  test("of which nothing is known are worth nothing that could be said", () => {
    const report = reportOf({ corners: [{ number: 1 }], driven: evenings({ 1: five }) });
    expect(of(report, 1).worth).toBeUndefined();
    expect(of(report, 1).unused).toEqual({ known: false, reason: { because: "not seen in a replay" } });
    expect(report.order).toEqual([]);
  });

  test("where a mistake cost less than nothing are worth what is unused", () => {
    // A contact that pushed the car on: faster than the usual lap.
    const driven = evenings({ 1: [...five, { ms: 83_000, remarks: [{ kind: "contact", corner: 3 }] }] });
    const report = reportOf({ driven, reviews: [aReview(1, [{ number: 3, exit: 2 }])] });
    const { unused, worth, mistakes } = of(report, 3);
    expect(mistakes.ms).toBe(-200);
    expect(unused.known && unused.value.ms).toEqual(worth);
  });

  test("told by the same seconds stand in the order of their mistakes", () => {
    const driven = evenings({ 1: [...five, off(84_218, 4), off(84_224, 9), off(84_200, 4)] });
    const report = reportOf({ driven });
    const ms = [4, 9].map((number) => of(report, number).mistakes);
    expect(ms.map((one) => one.mistakes)).toEqual([2, 1]);
    expect(Math.round((ms[0]?.ms ?? 9) / 10)).toBe(Math.round((ms[1]?.ms ?? 0) / 10));
    expect(report.order[0]).toBe(4);
  });

  test("with mistakes of unknown cost come last, the most of them first", () => {
    const report = reportOf({
      driven: evenings({ 1: [84_000, off(90_000, 3), off(90_000, 4), off(90_000, 4)] }),
      reviews: [aReview(1, [{ number: 8, exit: 1 }])],
    });
    expect(report.order).toEqual([8, 4, 3]);
    expect(of(report, 4).worth).toBeUndefined();
  });

  test("whose geometry is wrong say so, and are worth what mistakes cost there", () => {
    const report = reportOf({
      corners: [{ number: 3, width: 1.5 }],
      driven: evenings({ 1: [...five, off(90_200, 3)] }),
      reviews: [aReview(1, [{ number: 3, exit: 2 }])],
    });
    expect(of(report, 3).unused).toMatchObject({ reason: { because: "car wider than the road" } });
    expect(of(report, 3).worth?.mid).toBe(1000);
  });
});

describe("unused road", () => {
  test("is told of the newest review that looked at gaps, by the sums of the corner", () => {
    const report = reportOf({
      corners: [{ number: 3, bend: "slow", after: "long" }],
      reviews: [
        aReview(1, [{ number: 3, entry: 1, apex: 0.5, exit: 2 }]),
        aReview(9, [{ number: 3, throttle: "late" }]),
      ],
    });
    const cost = cornerCost(
      { corner: { number: 3, bend: "slow", after: "long" }, car: {}, before: {} },
      { entry: 1, apex: 0.5, exit: 2 },
    );
    if (!cost.known) throw new Error();
    const { seconds, exitSpeed } = cost.value;
    expect(of(report, 3).unused).toMatchObject({
      value: {
        reviewId: "review 1",
        on: "2026-01-02",
        gaps: { entry: 1, apex: 0.5, exit: 2 },
        ms: { low: Math.round(1000 * seconds.low), mid: Math.round(1000 * seconds.mid) },
        speed: { mid: 3.6 * exitSpeed.mid },
        largest: { at: "exit", metres: 2, cars: 2 / 1.8 },
        nothingToGain: false,
      },
    });
    expect(report.unusedMs).toEqual(of(report, 3).worth);
  });

  test("of two reviews of one day is told of the one written down last", () => {
    const [first, second] = [aReview(1, [{ number: 3, exit: 2 }]), aReview(1, [{ number: 3, exit: 1 }])];
    const later = { ...second, id: "a later one", createdAt: 5 };
    for (const reviews of [
      [first, later],
      [later, first],
    ])
      expect(of(reportOf({ reviews }), 3).unused).toMatchObject({ value: { reviewId: "a later one" } });
  });

  test("of two days is told of the later one, whichever was written down last", () => {
    const backdated = aReview(1, [{ number: 3, exit: 2 }], { createdAt: 99 });
    const newer = aReview(9, [{ number: 3, exit: 1 }]);
    for (const reviews of [
      [backdated, newer],
      [newer, backdated],
    ])
      expect(of(reportOf({ reviews }), 3).unused).toMatchObject({ value: { reviewId: "review 9" } });
  });

  test("of two reviews written down at once is told of the same one, in whatever order they are read", () => {
    const twins = ["a", "b"].map((id) => aReview(1, [{ number: 3, exit: 1 }], { id }));
    const told = [twins, twins.toReversed()].map((reviews) => of(reportOf({ reviews }), 3).unused);
    expect(told[0]).toMatchObject({ value: { reviewId: "b" } });
    expect(told[1]).toEqual(told[0]);
  });

  test("names the largest gap wherever it is; of two alike the one further on, which costs more", () => {
    const largest = (gaps: Omit<ReviewedCorner, "number">) => {
      const { unused } = of(reportOf({ reviews: [aReview(1, [{ number: 3, ...gaps }])] }), 3);
      return unused.known && unused.value.largest;
    };
    expect(largest({ entry: 2, apex: 0.5, exit: 1 })).toMatchObject({ at: "entry", metres: 2 });
    expect(largest({ entry: 1, apex: 1.2 })).toMatchObject({ at: "apex", metres: 1.2 });
    expect(largest({ entry: 1, apex: 1, exit: 1 })).toMatchObject({ at: "exit" });
  });

  test("of the corners looked at is added up, whatever corners there are besides", () => {
    const report = reportOf({
      corners: [{ number: 1 }, { number: 3 }],
      reviews: [aReview(1, [{ number: 3, exit: 2 }])],
    });
    expect(report.unusedMs).toEqual(of(report, 3).worth);
  });

  test("over the edge nothing is unused, and the largest gap is below zero", () => {
    const [corner] = reportOf({ reviews: [aReview(1, [{ number: 3, exit: -2 }])] }).corners;
    expect(corner?.unused).toMatchObject({
      value: { ms: { low: 0, mid: 0, high: 0 }, nothingToGain: true, largest: { at: "exit", metres: -2 } },
    });
    expect(corner?.worth?.mid).toBe(0);
  });

  test("is of the present page", () => {
    const pages = [aPage(Date.UTC(2026, 0, 10))];
    const driven = evenings({ 1: five, 12: five });
    const both = [aReview(1, [{ number: 3, exit: 2 }]), aReview(12, [{ number: 4, exit: 1 }])];
    const report = reportOf({ pages, driven, reviews: both });
    expect(report.reviews).toEqual([{ id: "review 12", on: "2026-01-13", corners: [4] }]);
    expect(report.sessions).toBe(1);
    // One that names a session stands where that does, whatever its day.
    const named = aReview(1, [{ number: 3, exit: 2 }], { sessionId: "session 12" });
    expect(reportOf({ pages, driven, reviews: [named] }).reviews).toHaveLength(1);
    // One that names none belongs to the last evening up to its day, in whatever order those are read.
    const [between, after] = [5, 20].map((day) => aReview(day, [{ number: 3, exit: 2 }]));
    for (const sessions of [driven, driven.toReversed()])
      expect(
        reportOf({ pages, driven: sessions, reviews: [between, after] as CornerReview[] }).reviews,
      ).toMatchObject([{ id: "review 20" }]);
  });
});

describe("why", () => {
  const reasons = (fields: Parameters<typeof reportOf>[0]) =>
    of(reportOf(fields), 3).why.map(({ why }) => why);
  const reviews = [aReview(1, [{ number: 3, entry: 0.2, exit: 1 }])];

  test("a long straight after it, whose length may be assumed", () => {
    const straight = (corner: Partial<Corner>) =>
      of(reportOf({ reviews, corners: [{ number: 3, ...corner }] }), 3).why[0];
    expect(straight({ after: "long" })).toEqual({ why: "straight after", after: "long", isAssumed: true });
    expect(straight({ afterLength: 600 })).toMatchObject({ why: "straight after", isAssumed: false });
    for (const corner of [{}, { after: "middling" }, { after: "long", afterLength: 200 }] as const)
      expect(straight(corner)).toEqual({ why: "largest gap", at: "exit", metres: 1 });
  });

  test("nothing of the road where there is nothing to gain from it", () => {
    const kink: Corner = { number: 3, bend: "kink", after: "long" };
    expect(reasons({ reviews, corners: [kink] })).toEqual([]);
    const over = [aReview(1, [{ number: 3, exit: -1 }])];
    expect(reasons({ reviews: over, corners: [{ number: 3, after: "long" }] })).toEqual([]);
  });

  test("the last of a chain", () => {
    const chain: Corner[] = [{ number: 2, after: "none" }, { number: 3 }];
    expect(reasons({ reviews, corners: chain })).toEqual(["last of its chain", "largest gap"]);
    expect(
      reasons({
        reviews,
        corners: [
          { number: 2, after: "none" },
          { number: 3, after: "none" },
        ],
      }),
    ).toEqual(["largest gap"]);
  });

  test("mistakes stand before the road where they cost more, after it where less", () => {
    const laps = (ms: number) => evenings({ 1: [...five, off(ms, 3)] });
    expect(reasons({ reviews, driven: laps(90_200) })).toEqual(["mistakes", "largest gap"]);
    expect(reasons({ reviews, driven: laps(84_230) })).toEqual(["largest gap", "mistakes"]);
    expect(of(reportOf({ driven: laps(90_200) }), 3).why).toEqual([
      { why: "mistakes", mistakes: 1, laps: 6 },
    ]);
  });

  test("the sector that holds most time", () => {
    const laps = five.map((ms, index) => ({ ms, sectors: [30_000, ms - 30_000], n: index + 1 }));
    const corners: Corner[] = [
      { number: 3, sector: 2 },
      { number: 1, sector: 1 },
      { number: 2, sector: 2 },
    ];
    const report = reportOf({ driven: evenings({ 1: laps }), corners });
    expect(report.sector).toEqual({ sector: 2, ms: 200, corners: [2, 3] });
    expect(of(report, 3).why).toEqual([{ why: "sector", sector: 2 }]);
    expect(of(report, 1).why).toEqual([]);
  });

  test("no sector where none holds any time", () => {
    const laps = five.map((_, index) => ({ ms: 84_000, sectors: [30_000, 54_000], n: index + 1 }));
    const report = reportOf({ driven: evenings({ 1: laps }), corners: [{ number: 3, sector: 1 }] });
    expect(report.sector).toBeUndefined();
    expect(of(report, 3).why).toEqual([]);
  });
});

describe("change", () => {
  const before = aReview(1, [
    { number: 3, entry: 2, apex: 1, exit: 2 },
    { number: 4, exit: 1 },
    { number: 5, exit: 1 },
  ]);
  const now = aReview(20, [
    { number: 3, entry: 1, apex: 0.5, exit: 1 },
    { number: 4, exit: 1, entry: 3 },
    { number: 6, exit: 1 },
  ]);

  test("is told corner by corner, least and most, of the gaps both looked at", () => {
    const report = reportOf({ reviews: [now, before] });
    const facts = { corner: { number: 3 }, car: {}, before: {} };
    const expected = cornerChange(facts, { entry: 2, apex: 1, exit: 2 }, { entry: 1, apex: 0.5, exit: 1 });
    if (!expected?.known) throw new Error();
    const span = spanOfChanges([expected.value]);
    expect(of(report, 3).change).toMatchObject({
      from: "2026-01-02",
      to: "2026-01-21",
      ms: { mid: Math.round(1000 * span.mid), low: Math.round(1000 * span.low) },
    });
    expect(of(report, 3).change?.ms.mid).toBeLessThan(0);
    // The entry, which nobody had looked at before, is no change; misjudged by as much it may be either.
    const unmoved = of(report, 4).change?.ms;
    expect(unmoved?.mid).toBe(0);
    expect(unmoved?.low).toBe(-(unmoved?.high ?? 0));
    expect(of(report, 5).change).toBeUndefined();
    expect(of(report, 6).change).toBeUndefined();
  });

  test("in sum is that of the corners both reviews share", () => {
    const report = reportOf({ reviews: [before, now] });
    const [three, four] = [of(report, 3).change?.ms, of(report, 4).change?.ms];
    expect(report.change).toMatchObject({ from: "2026-01-02", to: "2026-01-21", corners: [3, 4] });
    const { low = 0, mid = 0, high = 0 } = report.change?.ms ?? {};
    expect(mid).toBe((three?.mid ?? 0) + (four?.mid ?? 0));
    expect(low).toBeGreaterThan((three?.low ?? 0) + (four?.low ?? 0));
    expect(low).toBeLessThan(three?.low ?? 0);
    expect(high).toBeGreaterThan(three?.high ?? 0);
  });

  test("goes past reviews that share nothing with the newest", () => {
    const between = aReview(10, [{ number: 9, exit: 1 }]);
    const report = reportOf({ reviews: [before, between, now] });
    expect(report.change).toMatchObject({ from: "2026-01-02", to: "2026-01-21" });
    expect(reportOf({ reviews: [between, now] }).change).toBeUndefined();
  });

  test("asks the level between the two days whether lap times followed, with a reason where it cannot tell", () => {
    const few = reportOf({ reviews: [before, now], driven: evenings({ 1: five, 20: five }) });
    expect(few.change?.level).toMatchObject({ known: false, reason: { needs: 4, of: "session", has: 2 } });
    const faster = (ms: number) => five.map((lap) => lap - ms);
    const driven = evenings({ 1: five, 8: faster(400), 15: faster(800), 20: faster(1200), 27: faster(3000) });
    const level = reportOf({ reviews: [before, now], driven }).change?.level;
    expect(level).toMatchObject({
      known: true,
      value: { from: "2026-01-02", to: "2026-01-21", sessions: 4 },
    });
    expect(level?.known && level.value.change).toBeLessThan(-400);
    expect(level?.known && level.value.change).toBeGreaterThan(-2000);
  });
});

test("words of the pedals and the line are counted over all reviews of the page, the most said first", () => {
  const report = reportOf({
    reviews: [
      aReview(1, [{ number: 3, braking: "early", throttle: "twice", isOffLine: true }]),
      aReview(2, [{ number: 3, braking: "late", throttle: "late" }]),
      aReview(3, [{ number: 3, braking: "late" }]),
      aReview(4, [{ number: 4, braking: "right" }]),
    ],
  });
  expect(of(report, 3).habits).toEqual({
    reviews: 3,
    braking: [
      { what: "late", count: 2 },
      { what: "early", count: 1 },
    ],
    throttle: [
      { what: "late", count: 1 },
      { what: "twice", count: 1 },
    ],
    offLine: 1,
  });
});

test("the sum of what is unused stands beside the pace line of the same sessions' account", () => {
  const driven = evenings({ 1: five, 2: five });
  const report = reportOf({
    driven,
    reviews: [
      aReview(1, [
        { number: 3, exit: 1 },
        { number: 4, exit: 1 },
      ]),
    ],
  });
  // The second evening is measured against the PB of the first, 84.0: its best five have a mean of 84.0 at best-of-five.
  expect(report.paceMs).toBe(0);
  expect(report.unusedMs?.mid).toBe(2 * (of(report, 3).worth?.mid ?? 0));
});

test("only the last ten sessions of the page that were driven are looked at", () => {
  const days = Object.fromEntries(
    Array.from({ length: 12 }, (_, day) => [day, [...five, off(90_200, day + 1)]]),
  );
  const driven = [...evenings(days), ...evenings({ 30: [] })];
  for (const sessions of [driven, driven.toReversed()])
    expect(reportOf({ driven: sessions }).corners.map(({ number }) => number)).toEqual([
      3, 4, 5, 6, 7, 8, 9, 10, 11, 12,
    ]);
  const report = reportOf({ driven });
  expect(report.sessions).toBe(10);
  expect(report.laps).toBe(60);
});
