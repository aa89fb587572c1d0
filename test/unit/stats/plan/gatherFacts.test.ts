import { expect, test } from "vitest";
import type { CornerReview, Lap, PlannedRun, ReviewedCorner, Target } from "#domain";
import { gatherFacts, type PlanInput, sessionDigest } from "#stats";
import { aPage, aRun, aSession, choices, type Told } from "../someRows.ts";

const five = [84_000, 84_100, 84_200, 84_300, 84_400];
const off = (corner: number): Partial<Lap> => ({ ms: 90_000, remarks: [{ kind: "off", corner }] });

/** Evenings on days of January 2026, each of one run. */
function evenings(days: Readonly<Record<number, readonly Told[]>>) {
  return Object.entries(days).map(([day, laps]) => {
    const session = aSession(Number(day));
    return { session, runs: [aRun(1, laps, { sessionId: session.id })] };
  });
}

function factsOf({
  driven = [],
  ...fields
}: Partial<PlanInput> & { readonly driven?: ReturnType<typeof evenings> }) {
  return gatherFacts({
    ...{
      comboId: "combo",
      pages: [],
      targets: [],
      references: [],
      reviews: [],
      corners: [],
      lowestSpeeds: [],
    },
    ...{ car: {}, preferences: choices, today: "2026-01-31", rigTest: undefined, sessions: driven },
    digests: driven.map(({ session, runs }) => sessionDigest(session, runs, choices)),
    ...fields,
  });
}

const aReview = (day: number, corners: readonly ReviewedCorner[]): CornerReview => ({
  ...{
    id: `review ${day}`,
    createdAt: day,
    updatedAt: day,
    comboId: "combo",
    on: aSession(day).date,
    corners,
  },
});

test("where nothing was driven nothing is known", () => {
  expect(factsOf({})).toMatchObject({
    ...{ driven: { sessions: 0, laps: 0, before: 0 }, evening: undefined, daysSince: undefined },
    ...{ account: undefined, lost: { laps: 0, lost: 0 }, corners: [], target: undefined, usual: undefined },
  });
});

test("the usual evening is the middle one of the last six, a lap in the middle of its evening", () => {
  const driven = evenings({
    1: new Array<number>(90).fill(84_000),
    ...Object.fromEntries([3, 5, 7, 9, 11, 13].map((day) => [day, five])),
  });
  // Five laps of 84.2 s are seven minutes.
  expect(factsOf({ driven })).toMatchObject({
    evening: { laps: 5, minutes: 7, lapMs: 84_200 },
    daysSince: 17,
  });
});

test("laps lost are counted with those that have no time, out laps are none, and older pages are apart", () => {
  const driven = evenings({ 1: five, 10: [[90_000, "out"], ...five, off(5), [undefined, "spin"]] });
  expect(factsOf({ driven, pages: [aPage(aSession(5).startedAt)] })).toMatchObject({
    driven: { sessions: 1, laps: 8, before: 1 },
    evenings: 1,
    lost: { laps: 7, lost: 2 },
  });
});

test("braking is a habit from two reviews on that say the same more often than all else", () => {
  const of = (...words: readonly ("early" | "late" | "right")[]) =>
    factsOf({
      driven: evenings({ 1: [...five, off(5)] }),
      reviews: words.map((braking, n) => aReview(2 + n, [{ number: 5, braking }])),
    }).corners[0]?.braking;
  expect(of("late")).toBeUndefined();
  expect(of("late", "late")).toEqual({ what: "late", count: 2, of: 2 });
  expect(of("late", "late", "right")).toEqual({ what: "late", count: 2, of: 3 });
  expect(of("late", "late", "right", "right")).toBeUndefined();
  expect(of("right", "right")).toBeUndefined();
});

test("the target is the open one whose date comes next, with the one thing to do for it", () => {
  const aTarget = (id: string, fields: Partial<Target>): Target => ({
    ...{ id, createdAt: 0, updatedAt: 0, comboId: "combo", kind: "best", value: 83_000 },
    ...{ setAt: aSession(0).startedAt, setOn: "2026-01-01" },
    ...fields,
  });
  const targets = [
    aTarget("undated", {}),
    aTarget("later", { by: "2026-03-01" }),
    aTarget("next", { by: "2026-02-10", kind: "meanOf", laps: 5, process: "later apex" }),
    aTarget("reached", { by: "2026-02-05", value: 84_000 }),
  ];
  expect(factsOf({ driven: evenings({ 3: five }), targets }).target).toEqual({
    ...{ kind: "meanOf", value: 83_000, laps: 5, by: "2026-02-10", days: 10, process: "later apex" },
  });
  expect(
    factsOf({ driven: evenings({ 3: five }), targets: [aTarget("undated", {})] }).target,
  ).toBeUndefined();
});

test("lines of earlier plans that were driven are remembered, the one driven last first", () => {
  const line = (id: string, rule: string): PlannedRun => ({
    ...{ id, rule, purpose: "", laps: 5, check: { figure: "usual", value: 84_200 } },
  });
  const planned = (day: number, rule: string, laps: readonly number[]) => {
    const session = aSession(day, { plan: [line(`l${day}`, rule)] });
    return { session, runs: [aRun(1, laps, { sessionId: session.id, line: `l${day}` })] };
  };
  const driven = [
    planned(1, "pace", five),
    planned(
      4,
      "mistakes",
      five.map((ms) => ms + 500),
    ),
  ];
  const last = aSession(6, { plan: [line("first", "corner"), line("second", "again")] });
  const runs = ["first", "second"].map((id, n) => aRun(n + 1, five, { sessionId: last.id, line: id }));
  expect(factsOf({ driven: [...driven, { session: last, runs }] }).tried).toMatchObject([
    { rule: "again" },
    { rule: "corner" },
    { rule: "mistakes", isGood: false },
    { rule: "pace", isGood: true },
  ]);
});

test("evenings without a lap at pace are driven, and take no place among those the account is of", () => {
  const driven = evenings(Object.fromEntries([1, 3, 5, 7, 9, 11].map((day) => [day, [...five, off(5)]])));
  const session = aSession(13);
  const drills = { session, runs: [aRun(1, [90_000, 90_000], { sessionId: session.id, kind: "drill" })] };
  expect(factsOf({ driven: [...driven, drills] })).toMatchObject({
    driven: { sessions: 7, laps: 38 },
    evenings: 6,
    lost: { laps: 36, lost: 6 },
    usualOn: "2026-01-12",
  });
});

test("laps are to differ as on the middle evening, so that one even run is not asked for ever after", () => {
  const even = [84_000, 84_010, 84_000, 84_010, 84_000, 84_010];
  const uneven = [84_000, 84_400, 84_000, 84_400, 84_000, 84_400];
  // Half the mean square of differences of 400 is 80 000, its root 282.8; of 10 it is 7.1.
  const { scatter } = factsOf({ driven: evenings({ 1: uneven, 3: uneven, 5: even }) });
  expect(scatter).toBeCloseTo(282.8, 0);
});

test("what evenings are measured against is named where it is the same for all", () => {
  const driven = evenings({ 1: five, 3: five, 5: five });
  expect(factsOf({ driven }).against).toBe("pb");
  const [first, ...others] = driven;
  if (first === undefined) throw new Error("three of them");
  const own = { ...first, session: { ...first.session, targetMs: 83_000 } };
  expect(factsOf({ driven: [own, ...others] }).against).toBeUndefined();
});

test("of a drill it is remembered how many tries came off", () => {
  const line: PlannedRun = {
    ...{ id: "l", rule: "drill", purpose: "", laps: 5, drill: "braking", corner: 5 },
    check: { figure: "drill", value: 800 },
  };
  const session = aSession(1, { plan: [line] });
  const counts = [{ drill: "braking", corner: 5, tries: 10, good: 7 }] as const;
  const runs = [aRun(1, five, { sessionId: session.id, kind: "drill", line: "l", counts })];
  expect(factsOf({ driven: [{ session, runs }] }).tried).toMatchObject([
    { drill: "braking", came: { good: 7, tries: 10 }, isGood: false },
  ]);
});
