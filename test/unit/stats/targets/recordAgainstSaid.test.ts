import fc from "fast-check";
import { expect, test } from "vitest";
import {
  numberReached,
  type RecordedForecast,
  recordAgainstSaid,
} from "../../../../src/stats/targets/recordAgainstSaid.ts";

const forecast = (n: number, chance: number, reached: boolean): RecordedForecast => ({
  ...{ targetId: `t${n}`, madeOn: "2026-01-01", by: "2026-02-01", chance, reached },
});
const judged = (forecasts: readonly RecordedForecast[]) => {
  const found = recordAgainstSaid(forecasts);
  return found.known ? found.value : undefined;
};
const record = (chance: number, count: number, reached: number) =>
  judged(Array.from({ length: count }, (_, n) => forecast(n, chance, n < reached)));

test("with equal chances the number reached is binomial", () => {
  // C(8, k) / 256.
  expect(numberReached(new Array<number>(8).fill(0.5)).map((share) => share * 256)).toEqual([
    1, 8, 28, 56, 70, 56, 28, 8, 1,
  ]);
});

test("the chances of all numbers add up to one, and their mean is the sum of the chances", () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 20 }), (chances) => {
      const shares = numberReached(chances);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
      const mean = shares.reduce((sum, share, count) => sum + share * count, 0);
      expect(mean).toBeCloseTo(
        chances.reduce((sum, chance) => sum + chance, 0),
        9,
      );
    }),
  );
});

test("a record contradicts what was said where chance lets it happen less than one time in twenty", () => {
  // Of eight with one half each: one or none in 9 of 256, two or fewer in 37 of 256.
  expect(record(0.5, 8, 1)?.contradicts).toBe("too hopeful");
  expect(record(0.5, 8, 2)).toEqual({ targets: 8, reached: 2, expected: 4, contradicts: "no" });
  expect(record(0.5, 8, 6)?.contradicts).toBe("no");
  expect(record(0.5, 8, 7)?.contradicts).toBe("too cautious");
});

test("a target counts once, by what was said of it first, and with another date as another", () => {
  const five = Array.from({ length: 5 }, (_, n) => forecast(n, 0.5, true));
  const again = { ...forecast(0, 0.9, true), madeOn: "2026-01-20" };
  expect(judged([again, ...five])).toMatchObject({ targets: 5, expected: 2.5 });
  expect(judged([{ ...again, by: "2026-03-01" }, ...five])).toMatchObject({ targets: 6 });
  expect(recordAgainstSaid([again, ...five.slice(0, 4)])).toEqual({
    known: false,
    reason: { needs: 5, of: "target that came due", has: 4 },
  });
});
