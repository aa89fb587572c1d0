import { describe, expect, test } from "vitest";
import { accountChange, type ComboReview } from "#stats";
import { accountTitle, practiceTitle, progressReading, progressTitle, sayBreak } from "#words";
import { reviewOf, truth } from "./theDemo.ts";

const on = { asOf: "2026-11-22", today: "2026-11-22" };

/** Numbers of seconds a sentence holds. */
const secondsIn = (sentence: string) => (sentence.match(/\d+\.\d+/g) ?? []).map(Number);

describe("what Review says of the demo, against what the generator made true", () => {
  test("the combo that improves is called very likely faster, by an interval that holds its true gain", () => {
    const review = reviewOf("ringHatch");
    expect(progressTitle(review, on)).toMatch(
      /^Usual lap faster by .* since \d+ \w+, very likely at least \d\.\d\d s$/,
    );
    const gain = -truth.combos.ringHatch.gainMs / 1000;
    const [, least = 0] = secondsIn(progressTitle(review, on));
    expect(least).toBeGreaterThan(1);
    expect(least).toBeLessThan(gain);
    const [low = 0, high = 0] = secondsIn(progressReading(review));
    expect([low < gain, gain < high]).toEqual([true, true]);
  });

  test("the true gain a week of the straight line lies in the line's own interval", () => {
    const { trend } = reviewOf("ringHatch");
    if (!trend.known) throw new Error(JSON.stringify(trend.reason));
    const { low, high } = trend.value.perWeek;
    const { gainPerWeekMs } = truth.combos.ringHatch;
    expect([low < gainPerWeekMs, gainPerWeekMs < high]).toEqual([true, true]);
  });

  test("the flat combo is called neither faster nor slower, and the interval leaves room for the truth", () => {
    const review = reviewOf("moorSingle");
    expect(truth.combos.moorSingle.gainMs).toBe(0);
    expect(progressTitle(review, on)).toMatch(/^Usual lap not clearly faster or slower since \d+ \w+: /);
    expect(progressReading(review)).toMatch(/: between \d\.\d+ s faster and \d\.\d+ s slower\./);
  });

  test("of the combo with two sessions nothing is claimed, but how many sessions it needs", () => {
    const review = reviewOf("ringTrainer");
    expect(progressTitle(review, on)).toBe("Not enough sessions with 5 pace laps each yet: 2 of 4");
    expect(progressReading(review)).toMatch(/^Each session's usual lap is drawn; /);
  });

  test("laps, sessions and the break are those the generator drove", () => {
    const { practice, breaks } = reviewOf("ringHatch");
    const { sessions, laps } = truth.combos.ringHatch;
    expect(practiceTitle(practice)).toMatch(new RegExp(`^${sessions} sessions, ${laps.driven} laps, `));
    expect(practice.days.reduce((sum, day) => sum + day.laps, 0)).toBe(laps.driven);
    expect(breaks.map(({ from, to }) => [from, to])).toEqual([["2026-10-01", "2026-10-17"]]);
    const { medians } = truth.combos.ringHatch;
    const at = (date: string) => medians.find((one) => one.date === date)?.ms ?? 0;
    const cost = breaks[0]?.cost;
    if (!cost?.known) throw new Error("the cost of the break is known");
    // True step over the break, less the mean true step of ordinary neighbours.
    const steps = medians
      .slice(1)
      .map(({ date, ms }, index) => ({ date, ms: ms - (medians[index]?.ms ?? 0) }));
    const ordinary = steps.filter(({ date }) => date !== "2026-10-17").map(({ ms }) => ms);
    const usual = ordinary.reduce((sum, ms) => sum + ms, 0) / ordinary.length;
    const trueCost = at("2026-10-17") - at("2026-10-01") - usual;
    expect(cost.value.low).toBeLessThan(trueCost);
    expect(cost.value.high).toBeGreaterThan(trueCost);
    expect(breaks.map(sayBreak)[0]).toMatch(/^16 days without a session/);
  });

  test("the curve's bands of the sessions driven hold the true level of most of them", () => {
    const { curve } = reviewOf("ringHatch");
    if (!curve.known) throw new Error(JSON.stringify(curve.reason));
    const { medians } = truth.combos.ringHatch;
    const held = curve.value.line.filter(({ date, low, high }) => {
      const { ms = 0 } = medians.find((one) => one.date === date) ?? {};
      return low <= ms && ms <= high;
    });
    expect(held.length / curve.value.line.length).toBeGreaterThanOrEqual(0.8);
  });

  test("tiredness, which the generator does not know, is not found", () => {
    for (const key of ["ringHatch", "moorSingle"] as const) {
      const { thirds } = reviewOf(key);
      if (!thirds.known) throw new Error(JSON.stringify(thirds.reason));
      expect(thirds.value.low).toBeLessThanOrEqual(0);
      expect(thirds.value.high).toBeGreaterThanOrEqual(0);
    }
  });

  test("accounts told in words hold the figures they are told from", () => {
    const { account }: Pick<ComboReview, "account"> = reviewOf("moorSingle");
    if (!account.known) throw new Error(JSON.stringify(account.reason));
    const told = secondsIn(accountTitle({ account }));
    const cents = (ms: number) => Math.round(ms / 10) / 100;
    const { pace, repeatability, mistakes, others } = account.value;
    expect([pace, repeatability, mistakes, others].map(cents)).toContain(told[0]);
  });

  test("an account laid beside itself has not changed", () => {
    const laps = [
      [84_000, 84_100, 84_200, 84_300, 84_400].map((ms) => ({
        ms,
        place: "pace" as const,
        isNotBest: false,
        isOdd: false,
      })),
    ];
    expect(accountChange(laps, laps)).toMatchObject({ value: { change: 0 } });
  });
});
