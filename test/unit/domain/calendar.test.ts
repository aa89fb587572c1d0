import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, compareDates, daysBetween, isCalendarDate, isoWeek, weekStart } from "#domain";

const aDate = fc.integer({ min: -300_000, max: 300_000 }).map((days) => addDays("2000-03-01", days));

describe("calendar dates", () => {
  it.each(["2026-10-14", "2024-02-29", "2000-02-29", "0001-01-01", "9999-12-31"])("%s exists", (date) =>
    expect(isCalendarDate(date)).toBe(true),
  );

  it.each([
    "2026-02-30",
    "2026-02-29",
    "1900-02-29",
    "2026-13-01",
    "2026-00-10",
    "2026-1-01",
    "0000-01-01",
    "",
    "20261014",
  ])("%s does not", (date) => expect(isCalendarDate(date)).toBe(false));

  it("steps over leap days, years and the changes of clocks", () => {
    expect(addDays("2024-02-28", 1)).toBe("2024-02-29");
    expect(addDays("2026-02-28", 1)).toBe("2026-03-01");
    expect(addDays("2026-12-31", 1)).toBe("2027-01-01");
    expect(addDays("2026-03-28", 2)).toBe("2026-03-30");
    expect(daysBetween("2026-10-24", "2026-10-26")).toBe(2);
    expect(() => addDays("9999-12-31", 1)).toThrow(RangeError);
    expect(() => addDays("2026-02-30", 1)).toThrow(RangeError);
  });

  it("counts back what it added", () => {
    fc.assert(
      fc.property(aDate, fc.integer({ min: -5000, max: 5000 }), (date, days) => {
        const moved = addDays(date, days);
        expect(daysBetween(date, moved)).toBe(days);
        expect(Math.sign(compareDates(date, moved))).toBe(Math.sign(-days) + 0);
      }),
      { seed: 3 },
    );
  });

  it("has a whole week from each Monday, all with one number", () => {
    fc.assert(
      fc.property(aDate, fc.integer({ min: 0, max: 6 }), (date, days) => {
        const monday = weekStart(date);
        expect(weekStart(addDays(monday, days))).toBe(monday);
        expect(isoWeek(addDays(monday, days))).toEqual(isoWeek(monday));
        expect(isoWeek(addDays(monday, 7))).not.toEqual(isoWeek(monday));
      }),
      { seed: 4 },
    );
  });
});
