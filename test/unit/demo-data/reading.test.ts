import { describe, expect, test } from "vitest";
import { lapsInOrder } from "#domain";
import { levelOutlook, median, orderedPairsTTest, pageEvents, rankSumTest } from "#stats";
import { comboKeys } from "../../../demo-data/combos.ts";
import { reviewOf, rows, truth } from "./theDemo.ts";

for (const key of comboKeys)
  describe(truth.combos[key].name, () => {
    const review = reviewOf(key);
    const facts = truth.combos[key];

    test("each lap has the place the generator meant it to have, and none is missing", () => {
      const { settling, ...counts } = review.counts;
      expect(settling).toBe(0);
      expect(counts).toEqual(facts.laps);
      expect(review.guestLaps).toBe(facts.guestLaps);
      expect(review.sessions).toBe(facts.sessions);
    });

    test("the personal best is the lap the generator expects", () => {
      const { lapId, ms } = review.bests.at(-1) ?? {};
      expect({ lapId, ms }).toEqual(facts.best);
    });

    test("the time account balances, over the weeks and in each session", () => {
      const accounts = [review.account, ...review.accounts.map(({ account }) => account)];
      const known = accounts.flatMap((account) => (account.known ? [account.value] : []));
      expect(known.length).toBeGreaterThan(0);
      for (const { pace, repeatability, mistakes, others, balance } of known)
        expect(pace + repeatability + mistakes + others).toBe(balance);
    });
  });

test("the combo that improves is read as falling, at its true slope", () => {
  const { trend } = reviewOf("ringHatch");
  const { gainPerWeekMs } = truth.combos.ringHatch;
  expect(gainPerWeekMs).toBeLessThan(-100);
  if (!trend.known) throw new Error(JSON.stringify(trend.reason));
  expect(trend.value.finding).toBe("falling");
  expect(trend.value.p).toBeLessThan(0.01);
  expect(trend.value.perWeek.low).toBeLessThan(gainPerWeekMs);
  expect(trend.value.perWeek.high).toBeGreaterThan(gainPerWeekMs);
});

test("its level holds the true level of most sessions, and the interval of its gain the true gain", () => {
  const { history } = reviewOf("ringHatch");
  const events = pageEvents(history, truth.lastDay, [truth.settings.gain.from]);
  const outlook = levelOutlook({ sessions: history, since: [0], seed: 1, events });
  const { medians } = truth.combos.ringHatch;
  if (!outlook.known) throw new Error("the demo has a level");
  const { curve, changes } = outlook.value;
  const trueMs = history.map(({ date }) => medians.find((median) => median.date === date)?.ms ?? Number.NaN);
  const held = curve.filter(({ low, high }, index) => {
    expect(high - low).toBeLessThan(1000);
    return low <= (trueMs[index] ?? 0) && (trueMs[index] ?? 0) <= high;
  });
  expect(held.length / curve.length).toBeGreaterThanOrEqual(0.85);
  const gain = (trueMs.at(-1) ?? 0) - (trueMs[0] ?? 0);
  expect(changes[0]?.low).toBeLessThan(gain);
  expect(changes[0]?.high).toBeGreaterThan(gain);
});

test("the combo gone flat shows no clear change, and what is ruled out leaves room for none", () => {
  const { trend } = reviewOf("moorSingle");
  expect(truth.combos.moorSingle.gainMs).toBe(0);
  if (!trend.known) throw new Error(JSON.stringify(trend.reason));
  expect(trend.value.finding).toBe("no clear change");
  expect(trend.value.perWeek.low).toBeLessThan(0);
  expect(trend.value.perWeek.high).toBeGreaterThan(0);
});

test("the combo with few laps gives its reason instead of a trend", () => {
  expect(reviewOf("ringTrainer").trend).toEqual({
    known: false,
    reason: { needs: 5, of: "session", each: { needs: 5, of: "pace lap" }, has: 2 },
  });
});

test("the gain test finds the true effect, and that there is one", () => {
  const medianOf = (pair: number, side: "A" | "B") => {
    const run = rows.runs.find(({ rigTest }) => rigTest?.pair === pair && rigTest.side === side);
    const laps = lapsInOrder(run ?? { laps: [] });
    return (
      median(laps.flatMap(({ ms, remarks }) => (ms === undefined || remarks.length > 0 ? [] : [ms]))) ?? 0
    );
  };
  const found = orderedPairsTTest(
    (rows.rigTests[0]?.pairs ?? []).map(({ first }, index) => {
      return { difference: medianOf(index + 1, "B") - medianOf(index + 1, "A"), first };
    }),
    0.9,
  );
  const effect = truth.settings.gain.effectMs.moorHatch;
  expect(effect).toBeLessThan(-200);
  expect(found?.low).toBeLessThan(effect);
  expect(found?.high).toBeGreaterThan(effect);
  expect(found?.high).toBeLessThan(0);
});

test("the new field of view did nothing to the flat combo, and the sessions say no more than that", () => {
  const { points } = reviewOf("moorSingle");
  const { from, effectMs } = truth.settings.view;
  const medians = (isAfter: boolean) =>
    points.flatMap(({ date, median }) => (median !== undefined && date >= from === isAfter ? [median] : []));
  const shift = rankSumTest(medians(true), medians(false), 0.9);
  expect(effectMs.moorSingle).toBe(0);
  expect(shift?.low).toBeLessThanOrEqual(0);
  expect(shift?.high).toBeGreaterThanOrEqual(0);
});
