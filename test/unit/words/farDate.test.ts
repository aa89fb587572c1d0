import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays, sayDate } from "#domain";
import { sayFarDate } from "#words";

const today = "2026-11-29";

test("a date within six weeks is told to the day", () => {
  expect(sayFarDate("2026-12-13", today)).toBe("Sun 13 Dec 2026");
  expect(sayFarDate(addDays(today, 42), today)).toBe("Sun 10 Jan 2027");
  expect(sayFarDate(today, today)).toBe(sayDate(today));
});

test("within four months the third of its month is told", () => {
  expect(sayFarDate(addDays(today, 43), today)).toBe("mid-January");
  expect(sayFarDate("2027-01-20", today)).toBe("mid-January");
  expect(sayFarDate("2027-01-21", today)).toBe("late January");
  expect(sayFarDate("2027-02-10", today)).toBe("early February");
  expect(sayFarDate(addDays(today, 120), today)).toBe("late March");
});

test("farther than that the month is told with its year, the same on either half of the earth", () => {
  expect(sayFarDate(addDays(today, 121), today)).toBe("March 2027");
  expect(sayFarDate("2027-04-05", today)).toBe("April 2027");
  expect(sayFarDate("2027-12-01", today)).toBe("December 2027");
  expect(sayFarDate("2100-01-05", "2099-03-01")).toBe("January 2100");
});

test("no date beyond six weeks is told to the day, and a month without its year is the next of its name", () => {
  fc.assert(
    fc.property(fc.integer({ min: 43, max: 3000 }), fc.integer({ min: 0, max: 3000 }), (away, shift) => {
      const from = addDays("2024-01-01", shift);
      const said = sayFarDate(addDays(from, away), from);
      expect(said).not.toMatch(/\b(Mon|Tue|Wed|Thu|Fri|Sat|Sun)\b/);
      if (!/\d/.test(said)) expect(away).toBeLessThanOrEqual(120);
    }),
  );
});
