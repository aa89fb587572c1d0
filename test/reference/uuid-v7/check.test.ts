import { expect, test } from "vitest";
import { idMaker } from "#db";
import reference from "./uuid-v7.json";

/** The sixteen bytes that hold the random parts of an id; the maker overwrites the rest with time and version. */
function randomOf(uuid: string): Uint8Array {
  return Uint8Array.from(uuid.replaceAll("-", "").match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}

/** Time in milliseconds as section 5.7 lays it out: the first 48 bits. */
const timeOf = (uuid: string) => Number.parseInt(uuid.replaceAll("-", "").slice(0, 12), 16);
const version7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

test("ids carry time, version and variant where RFC 9562 appendix A.6 has them", () => {
  const { example } = reference.expected;
  const made = idMaker(
    () => example.unixTsMs,
    () => randomOf(example.uuid),
  )();
  expect(made).toMatch(version7);
  expect(example.uuid).toMatch(version7);
  expect(made.slice(0, 14)).toBe(example.uuid.slice(0, 14));
  expect(timeOf(made)).toBe(example.unixTsMs);
  expect(timeOf(example.uuid)).toBe(example.unixTsMs);
  // The last 32 random bits are taken as they come; those between hold the counter.
  expect(made.slice(-8)).toBe(example.uuid.slice(-8));
});

test("values built from the layout of section 5.7 have the time they were built with", () => {
  for (const { uuid, unixTsMs } of reference.expected.built) {
    expect(uuid).toMatch(version7);
    const made = idMaker(
      () => unixTsMs,
      () => randomOf(uuid),
    )();
    expect(made.slice(0, 13)).toBe(uuid.slice(0, 13));
  }
  for (const uuid of reference.expected.notVersion7) expect(uuid).not.toMatch(version7);
});

test("ids of one maker sort as they were made when the clock stands still or goes back a month (section 6.2)", () => {
  const month = 30 * 86_400_000;
  let now = 1_758_000_000_123;
  const next = idMaker(() => now);
  const made = Array.from({ length: 3000 }, (_, index) => {
    if (index === 1000) now -= month;
    if (index === 2000) now += 2 * month;
    return next();
  });
  expect(made.toSorted()).toEqual(made);
  expect(new Set(made).size).toBe(made.length);
});

test("the counter running over moves on by a millisecond instead of starting again", () => {
  const next = idMaker(
    () => 1_758_000_000_123,
    () => new Uint8Array(16).fill(255),
  );
  const first = next();
  const later = Array.from({ length: 100 }, next);
  expect([first, ...later].toSorted()).toEqual([first, ...later]);
});
