import { expect, test } from "vitest";
import { believeNothing } from "../../support/believeNothing.ts";

const seed = 20_261_125;
const files = 500;
const before = Object.getOwnPropertyNames(Object.prototype).sort();

test("of 500 mutated backups, half of them signed again, none is believed in anything wrong, and none throws", async () => {
  const { threw, wrong, ...seen } = await believeNothing(seed, files);
  expect([...threw, ...wrong].slice(0, 20)).toEqual([]);
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  expect(Object.getOwnPropertyNames(Object.prototype).sort()).toEqual(before);
  // The mutations are of every sort: a good many files are refused, taken in part, and still whole.
  expect(seen.signed).toBeGreaterThan(200);
  expect(seen.refused).toBeGreaterThan(100);
  expect(seen.partly).toBeGreaterThan(100);
  expect(seen.whole).toBeGreaterThan(10);
});
