import { expect, it } from "vitest";
import { canonicalText, plainValue } from "#domain";

it("what JSON holds stays as it is", () => {
  const row = { id: "s", n: 1, isOdd: false, note: "", none: null, laps: [{ ms: 83_456 }, []] };
  expect(plainValue(row)).toEqual(row);
});

it("what JSON does not hold becomes its text", () => {
  expect(plainValue(Number.NaN)).toBe("NaN");
  expect(plainValue(Number.POSITIVE_INFINITY)).toBe("Infinity");
  expect(plainValue(12n)).toBe("12");
  expect(plainValue(new Date(Date.UTC(2026, 9, 14)))).toBe("2026-10-14T00:00:00.000Z");
  expect(plainValue(new Date(Number.NaN))).toBe("no instant of a calendar");
  expect(plainValue(new Uint8Array(2))).toBe("[object Uint8Array]");
  expect(plainValue(new Map([[1, 2]]))).toBe("[object Map]");
});

it("an absent field stays absent, an absent place in a list becomes null", () => {
  expect(plainValue({ a: undefined })).toEqual({ a: undefined });
  expect(plainValue(undefined)).toBeUndefined();
  expect(plainValue([1, undefined, 3])).toEqual([1, null, 3]);
});

it("what holds itself ends in a word, and a thing held twice is no such thing", () => {
  const loop: Record<string, unknown> = { n: 1 };
  loop["again"] = loop;
  expect(plainValue(loop)).toEqual({ n: 1, again: "[object Object]" });
  const shared = { ms: 1 };
  expect(plainValue({ a: shared, b: shared })).toEqual({ a: { ms: 1 }, b: { ms: 1 } });
});

it("however deep a value is, what comes of it is no deeper than can be written", () => {
  let deep: unknown = "bottom";
  for (let level = 0; level < 24; level++) deep = [deep];
  expect(canonicalText(plainValue(deep))).toContain("bottom");
  expect(canonicalText(plainValue([deep]))).toContain("[object Array]");
});

it("a field named like what every object has gets another name", () => {
  const row = JSON.parse('{"constructor": 1, "toString": 2, "date": 3}');
  expect(plainValue(row)).toEqual({ "field constructor": 1, "field toString": 2, date: 3 });
});
