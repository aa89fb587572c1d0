import { expect, test } from "vitest";
import { staysOvernight } from "../../../../src/stats/evenings/staysOvernight.ts";

/** An evening of ten laps that begins at one time and ends at another. */
const evening = (first: number, last: number) => [
  ...Array.from({ length: 5 }, () => first),
  ...Array.from({ length: 5 }, () => last),
];

test("what an evening begins with is set against what the one before ended with, not began with", () => {
  const slower = [100, 200, 300, 400, 500, 600];
  const pairs = slower.map((ms) => [evening(82_000, 80_000), evening(80_000 + ms, 79_000)] as const);
  const found = staysOvernight(pairs);
  // The signed-rank estimate is the median of all means of two: 350. With six pairs all on one side the 90 % interval leaves
  // out the two least means and the two largest (W. J. Conover, Practical Nonparametric Statistics, table A12; from memory).
  expect(found).toEqual({ known: true, value: { estimate: 350, low: 200, high: 500, pairs: 6 } });
});

test("six pairs are needed, an evening with fewer than five laps makes none, and evenings that are all alike say so", () => {
  const pair = [evening(82_000, 80_000), evening(80_100, 79_000)] as const;
  const short = [evening(82_000, 80_000), [80_100, 80_100, 80_100, 80_100]] as const;
  expect(staysOvernight([pair, pair, pair, pair, pair, short])).toEqual({
    known: false,
    reason: { needs: 6, of: "pair of evenings in a row", each: { needs: 5, of: "pace lap" }, has: 5 },
  });
  const same = [evening(80_000, 80_000), evening(80_000, 79_000)] as const;
  expect(staysOvernight([same, same, same, same, same, same])).toEqual({
    known: false,
    reason: { because: "sessions that do not differ" },
  });
});
