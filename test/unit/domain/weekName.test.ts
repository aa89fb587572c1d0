import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, mondayOf, weekday, weekName } from "#domain";

// ISO 8601, weeks at the turn of a year: the examples of test/reference/iso8601.
test.each([
  ["2005-01-01", "2004-W53"],
  ["2005-01-02", "2004-W53"],
  ["2007-01-01", "2007-W01"],
  ["2008-12-29", "2009-W01"],
  ["2010-01-03", "2009-W53"],
])("%s lies in %s", (date, week) => {
  expect(weekName(date)).toBe(week);
});

test("weeks are named and found from the year 2 to the year 9998", () => {
  // The year 1 begins on a Monday, so the year 2 on a Tuesday; 9998 begins on a Thursday.
  expect(weekName("0002-01-06")).toBe("0002-W01");
  expect(mondayOf("0002-W02")).toBe("0002-01-07");
  expect(mondayOf("9998-W02")).toBe("9998-01-05");
});

test("every day lies in the seven days that begin with the Monday of its week", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 400_000 }), (days) => {
      const date = addDays("1500-01-01", days);
      const monday = mondayOf(weekName(date)) ?? "";
      expect(weekday(monday)).toBe(1);
      expect(monday <= date && date <= addDays(monday, 6)).toBe(true);
    }),
  );
});

test("what is no week has no Monday", () => {
  const none = [
    "2025-W53",
    "2026-W00",
    "2026-W54",
    "2026-47",
    "week 3",
    "",
    "x2026-W47",
    "2026-W471",
    "0001-W01",
    "9999-W01",
  ];
  for (const text of none) expect(mondayOf(text)).toBeUndefined();
});
