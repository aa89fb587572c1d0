import { expect, test } from "vitest";
import { idMaker } from "#db";

const msOf = (id: string) => Number.parseInt(id.replaceAll("-", "").slice(0, 12), 16);
/** Sixteen bytes of which each is the same. */
const all = (byte: number) => () => new Uint8Array(16).fill(byte);

test("an id begins with the milliseconds of the clock", () => {
  expect(msOf(idMaker(() => 1_770_000_000_000)())).toBe(1_770_000_000_000);
  expect(msOf(idMaker(() => 0)())).toBe(0);
});

test("ids of one maker sort in the order they were made while the clock stands, goes back or goes on", () => {
  let now = 1000;
  const newId = idMaker(() => now);
  const ids = [0, 0, -500, 0, 499, 1, 0, 2].map((passed) => {
    now += passed;
    return newId();
  });
  expect(ids.toSorted()).toEqual(ids);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.map(msOf)).toEqual([1000, 1000, 1000, 1000, 1000, 1000, 1000, 1002]);
});

test("the counter begins with half of what chance can give, so that there is room to count", () => {
  // Of 32 bits of ones, shifted by one; version and variant stand between its digits.
  const id = idMaker(() => 1000, all(0xff))();
  expect(id).toBe("00000000-03e8-77ff-bfff-ffffffffffff");
});

test("two makers of one clock make different ids", () => {
  const [a, b] = [idMaker(() => 1000), idMaker(() => 1000)];
  expect(a()).not.toBe(b());
});

test("bytes from the middle of a buffer count from where they begin", () => {
  const within = () => new Uint8Array(new ArrayBuffer(32), 16).fill(0xff);
  expect(idMaker(() => 1000, within)()).toBe(idMaker(() => 1000, all(0xff))());
});
