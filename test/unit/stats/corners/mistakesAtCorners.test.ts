import fc from "fast-check";
import { expect, test } from "vitest";
import { type Lap, lapsInPlace, type Remark, type Run, remarkKinds } from "#domain";
import { type LapForAccount, timeAccount } from "#stats";
import { mistakesAtCorners } from "../../../../src/stats/corners/mistakesAtCorners.ts";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

const lost = (ms: number | undefined, ...remarks: Remark[]): Partial<Lap> => ({
  remarks,
  ...(ms !== undefined && { ms }),
});
const evening = (day: number, laps: readonly Told[], ...more: Run[]) => ({
  session: aSession(day),
  runs: [aRun(1, laps, { sessionId: `session ${day}` }), ...more],
});
const five = [84_000, 84_100, 84_200, 84_300, 84_400];

test("one off of six seconds in six laps costs a second a lap at its corner", () => {
  const found = mistakesAtCorners([evening(1, [...five, lost(90_200, { kind: "off", corner: 5 })])], choices);
  expect(found.named).toEqual([5]);
  expect(found.at(5)).toMatchObject({
    ms: 1000,
    laps: 6,
    mistakes: 1,
    counts: [{ kind: "off", count: 1 }],
    share: { share: 1 / 6 },
  });
  expect(found.at(7)).toMatchObject({ ms: 0, mistakes: 0, counts: [], share: { share: 0, low: 0 } });
  expect(found.unnamedMs).toBe(0);
});

test("a lap lost at two corners is shared between them, one that names none stays unnamed", () => {
  // Usual 84.2; three laps lost 3, 6 and 9 s of eight: 18/8 = 2.25 s a lap.
  const laps = [
    ...five,
    lost(87_200, { kind: "off", corner: 5 }, { kind: "spin", corner: 5 }, { kind: "spin", corner: 7 }),
    lost(90_200, { kind: "contact" }),
    lost(93_200, { kind: "spin", corner: 5 }, { kind: "contact", corner: 5 }),
  ];
  const found = mistakesAtCorners([evening(1, laps)], choices);
  expect(found.at(5).ms).toBe(188 + 1125);
  expect(found.at(7).ms).toBe(187);
  expect(found.unnamedMs).toBe(750);
  expect(found.at(5)).toMatchObject({ mistakes: 2, laps: 8 });
  expect(found.at(5).counts).toEqual([
    { kind: "spin", count: 2 },
    { kind: "off", count: 1 },
    { kind: "contact", count: 1 },
  ]);
});

test("evenings weigh by their laps, each measured by its own usual lap", () => {
  // 6 laps with one of 6 s over the usual: 1 s a lap; 12 laps of a slower evening without any: 6 of 18 laps.
  const slower = Array.from({ length: 12 }, () => 90_000);
  const evenings = [evening(1, [...five, lost(90_200, { kind: "off", corner: 5 })]), evening(2, slower)];
  expect(mistakesAtCorners(evenings, choices).at(5).ms).toBe(Math.round((1000 * 6) / 18));
});

test("cuts are counted at their corner, cost nothing and are no mistakes", () => {
  const laps = [...five, lost(83_900, { kind: "cut", corner: 3 })];
  const found = mistakesAtCorners([evening(1, laps)], choices);
  expect(found.at(3)).toMatchObject({ mistakes: 0, ms: 0, counts: [{ kind: "cut", count: 1 }] });
});

test("corners are named in lap order, whichever was named first", () => {
  const laps = [...five, lost(86_000, { kind: "off", corner: 7 }), lost(86_000, { kind: "spin", corner: 2 })];
  expect(mistakesAtCorners([evening(1, laps)], choices).named).toEqual([2, 7]);
});

test("a lap without a time is a mistake there, of unknown cost", () => {
  const laps = [...five, lost(undefined, { kind: "off", corner: 5 })];
  expect(mistakesAtCorners([evening(1, laps)], choices).at(5)).toMatchObject({ mistakes: 1, laps: 6, ms: 0 });
});

test("what others on track did names no corner for the driver", () => {
  const laps = [...five, lost(86_000, { kind: "traffic", corner: 4 })];
  const found = mistakesAtCorners([evening(1, laps)], choices);
  expect(found.named).toEqual([]);
  expect(found.at(4)).toMatchObject({ mistakes: 0, counts: [], ms: 0 });
});

test("laps of a guest are in nothing", () => {
  const guest = aRun(2, [lost(120_000, { kind: "off", corner: 5 })], {
    sessionId: "session 1",
    guest: "Ana",
  });
  const found = mistakesAtCorners([evening(1, five, guest)], choices);
  expect(found.laps).toBe(5);
  expect(found.at(5)).toMatchObject({ mistakes: 0, ms: 0 });
});

test("a mistake in a drill is counted, and is in no account", () => {
  const drill = aRun(2, [lost(120_000, { kind: "off", corner: 5 })], {
    sessionId: "session 1",
    kind: "drill",
  });
  expect(mistakesAtCorners([evening(1, five, drill)], choices).at(5)).toMatchObject({ mistakes: 1, ms: 0 });
});

test("without an account nothing is said of the cost", () => {
  const laps = [84_000, lost(90_000, { kind: "off", corner: 5 })];
  const found = mistakesAtCorners([evening(1, laps)], choices);
  expect(found.at(5)).toMatchObject({ mistakes: 1, ms: undefined });
  expect(found.unnamedMs).toBeUndefined();
  expect(mistakesAtCorners([], choices).at(5)).toMatchObject({ laps: 0, share: undefined, ms: undefined });
});

test("two corners lose on two evenings as many laps as each evening has of all", () => {
  // 6 s lost at 5 in 6 laps, 6 s at 7 in 12 laps: of 18 laps a third of a second at each, 667 ms together.
  const twelve = [...five, ...five, 84_200, lost(90_200, { kind: "spin", corner: 7 })];
  const found = mistakesAtCorners(
    [evening(1, [...five, lost(90_200, { kind: "off", corner: 5 })]), evening(2, twelve)],
    choices,
  );
  expect([found.at(5).ms, found.at(7).ms]).toEqual([334, 333]);
});

test("corners and what names none add up to the account's line of mistakes, to the millisecond", () => {
  const remark = fc.record(
    {
      kind: fc.constantFrom(...remarkKinds.map(({ kind }) => kind)),
      corner: fc.integer({ min: 1, max: 4 }),
    },
    { requiredKeys: ["kind"] },
  );
  const seldom = fc.integer({ min: 1, max: 12 }).map((draw) => draw === 1);
  const lap = fc
    .record({
      ms: fc.integer({ min: 60_000, max: 150_000 }),
      remarks: fc.oneof(
        { arbitrary: fc.constant([]), weight: 2 },
        { arbitrary: fc.array(remark, { maxLength: 3 }), weight: 1 },
      ),
      isUntimed: seldom,
      isNotBest: seldom,
      isOdd: seldom,
    })
    .map(
      ({ ms, remarks, isUntimed, isNotBest, isOdd }): Partial<Lap> => ({
        remarks,
        ...(!isUntimed && { ms }),
        ...(isNotBest && { isNotBest }),
        ...(isOdd && { isOdd }),
      }),
    );
  const sessions = fc.array(fc.array(lap, { minLength: 4, maxLength: 25, size: "max" }), {
    minLength: 1,
    maxLength: 4,
  });
  let [tried, compared] = [0, 0];
  fc.assert(
    fc.property(sessions, fc.integer({ min: 0, max: 3 }), (evenings, settling) => {
      tried++;
      const driven = evenings.map((laps, day) => evening(day, laps));
      const settlingLaps = settling as 0 | 1 | 2 | 3;
      const found = mistakesAtCorners(driven, { ...choices, settlingLaps });
      const account = timeAccount(
        driven.map(({ runs }) =>
          runs.flatMap((run) =>
            lapsInPlace(run, settlingLaps).map(
              ({ lap: { ms, remarks, isNotBest, isOdd }, place }): LapForAccount => ({
                ms,
                remarks,
                isNotBest,
                isOdd,
                pace: place === "pace",
              }),
            ),
          ),
        ),
        90_000,
      );
      const sum = [1, 2, 3, 4].reduce((total, corner) => total + (found.at(corner).ms ?? 0), 0);
      expect(found.unnamedMs === undefined).toBe(!account.known);
      if (!account.known) return;
      compared++;
      expect(sum + (found.unnamedMs ?? 0)).toBe(account.value.mistakes);
    }),
    { seed: 11, numRuns: 400 },
  );
  expect(compared).toBeGreaterThan(tried / 4);
});

test("a corner's part is what the line of mistakes would be less had its laps been usual ones", () => {
  const lap = fc.record({
    ms: fc.integer({ min: 80_000, max: 100_000 }),
    corner: fc.constantFrom(undefined, undefined, 1, 2, 3),
  });
  const sessions = fc.array(fc.array(lap, { minLength: 8, maxLength: 25, size: "max" }), {
    minLength: 1,
    maxLength: 4,
  });
  let [tried, compared] = [0, 0];
  fc.assert(
    fc.property(sessions, fc.constantFrom(1, 2, 3), (evenings, corner) => {
      tried++;
      const driven = evenings.map((laps, day) =>
        evening(
          day,
          laps.map((one) =>
            lost(one.ms, ...(one.corner ? [{ kind: "off", corner: one.corner } as const] : [])),
          ),
        ),
      );
      const forAccount = (isUsualThere: boolean) =>
        evenings.map((laps) => {
          const clean = laps.filter((one) => one.corner === undefined);
          const usual = clean.reduce((sum, { ms }) => sum + ms, 0) / Math.max(1, clean.length);
          return laps.map(
            (one): LapForAccount => ({
              ms: isUsualThere && one.corner === corner ? usual : one.ms,
              remarks: one.corner === undefined ? [] : [{ kind: "off" }],
              pace: one.corner === undefined,
            }),
          );
        });
      const [all, less] = [timeAccount(forAccount(false), 0), timeAccount(forAccount(true), 0)];
      if (!all.known || !less.known) return;
      compared++;
      const part = mistakesAtCorners(driven, choices).at(corner).ms ?? Number.NaN;
      expect(Math.abs(part - (all.value.mistakes - less.value.mistakes))).toBeLessThanOrEqual(2);
    }),
    { seed: 12, numRuns: 200 },
  );
  expect(compared).toBeGreaterThan(tried / 2);
});
