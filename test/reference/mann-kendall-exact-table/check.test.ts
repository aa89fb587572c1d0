import { describe, expect, it } from "vitest";
import { mannKendall } from "#stats";
import reference from "./mann-kendall-exact-table.json" with { type: "json" };

/** Values 0 … n − 1 in an order that has a wanted S: the greatest free value is moved forward as far as needed. */
function valuesWith(n: number, s: number): number[] {
  let inversions = ((n * (n - 1)) / 2 - s) / 2;
  const values: number[] = [];
  for (let value = 0; value < n; value++) {
    const back = Math.min(inversions, values.length);
    values.splice(values.length - back, 0, value);
    inversions -= back;
  }
  return values;
}

describe.each(Object.entries(reference.expected))("exact probabilities of S, %s", (name, rows) => {
  const n = Number(name.slice(1));

  it.each(rows as [number, number][])("S = %i", (s, chance) => {
    const test = mannKendall(valuesWith(n, s));
    expect(test?.s).toBe(s);
    expect(test?.exact).toBe(true);
    expect(test?.p).toBeCloseTo(s === 0 ? 1 : Math.min(1, 2 * chance), 12);
  });
});

it.each([
  [5, 6, 0.117],
  [8, 14, 0.054],
  [10, 21, 0.036],
])("Gilbert 1987, Table A18, from memory: n = %i, S = %i", (n, s, printed) => {
  expect(Math.abs((mannKendall(valuesWith(n, s))?.p ?? Number.NaN) / 2 - printed)).toBeLessThan(0.00051);
});
