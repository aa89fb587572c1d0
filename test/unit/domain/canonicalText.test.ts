import fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalText } from "#domain";

test("fields are sorted at every depth, absent ones leave no trace", () => {
  expect(canonicalText({ b: { d: 1, c: [2, { z: 1, a: null }] }, a: "x", e: undefined })).toBe(
    '{"a":"x","b":{"c":[2,{"a":null,"z":1}],"d":1}}',
  );
});

test("the text of any value from a file says the same as the value", () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
      expect(JSON.parse(canonicalText(value))).toEqual(JSON.parse(JSON.stringify(value)));
    }),
    { seed: 9 },
  );
});

test("a value nested deeper than any row is refused", () => {
  let deep: unknown = 1;
  for (let level = 0; level < 100_000; level += 1) deep = [deep];
  expect(() => canonicalText(deep)).toThrow(RangeError);
});
