import fc from "fast-check";
import { expect, test } from "vitest";
import { focuses, remarkKinds } from "#domain";
import { parseSearch, printSearch } from "../../../../src/screens/review/searchQuery.ts";

const date = fc
  .date({ min: new Date("2000-01-01"), max: new Date("2100-01-01"), noInvalidDate: true })
  .map((day) => day.toISOString().slice(0, 10));
const someText = fc.string({ unit: "grapheme", minLength: 1, maxLength: 20 });
const lapTime = fc.integer({ min: 0, max: 99_999_999 });
const terms = fc.record(
  {
    words: someText,
    remark: fc.constantFrom(...remarkKinds.map(({ kind }) => kind)),
    focus: fc.constantFrom(...focuses.map(({ focus }) => focus)),
    tyres: someText,
    from: date,
    to: date,
    shortest: lapTime,
    longest: lapTime,
  },
  { requiredKeys: [] },
);

test("what is looked for is read again from the query it is written as", () => {
  fc.assert(
    fc.property(terms, (asked) => {
      expect(parseSearch(printSearch(asked))).toEqual(asked);
    }),
  );
});

test("what is not understood is not asked for", () => {
  expect(parseSearch("remark=crash&from=yesterday&shortest=-3&words=")).toEqual({});
});
