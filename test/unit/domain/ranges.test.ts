import { expect, it } from "vitest";
import { firstDate, instantOf, isSayable, isStorableInstant, lapRange, lastDate, practiceDay } from "#domain";

it("every instant of a day a row may name is one it may name, in the first zone of the earth and in the last", () => {
  for (const zone of ["Pacific/Kiritimati", "Etc/GMT+12"])
    for (const date of [firstDate, lastDate]) {
      expect(isStorableInstant(instantOf(date, 0, zone))).toBe(true);
      expect(isStorableInstant(instantOf(date, 23, zone))).toBe(true);
    }
});

it("an instant of years beyond, or of half a millisecond, is none", () => {
  expect(isStorableInstant(Date.UTC(1969, 11, 30))).toBe(false);
  expect(isStorableInstant(Date.UTC(2200, 0, 3))).toBe(false);
  expect(isStorableInstant(Date.UTC(2026, 0, 1) + 0.5)).toBe(false);
  expect(isStorableInstant(Number.NaN)).toBe(false);
});

it("an instant is sayable where its day can be told in every zone", () => {
  for (const instant of [Date.parse("0001-01-03"), 0, Date.parse("9999-12-29")]) {
    expect(isSayable(instant)).toBe(true);
    for (const zone of ["Pacific/Kiritimati", "Etc/GMT+12"])
      expect(practiceDay(instant, zone, 0)).toMatch(/^\d{4}-\d\d-\d\d$/);
  }
  for (const value of [Date.parse("0001-01-02"), Date.parse("9999-12-30"), Number.NaN, "0", undefined])
    expect(isSayable(value)).toBe(false);
});

it("a lap takes from a tenth of a second to a day and a night", () => {
  expect(lapRange).toEqual({ least: 100, most: 24 * 60 * 60 * 1000 });
});
