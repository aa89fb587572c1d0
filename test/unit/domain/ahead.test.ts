import { expect, test } from "vitest";
import {
  askDate,
  dateDoubt,
  endOfTomorrow,
  instantOf,
  isAfterTomorrow,
  isAheadOf,
  isDateAsked,
  notedOn,
  sayNoted,
} from "#domain";

const now = Date.UTC(2026, 10, 28, 18);
const hour = 3_600_000;
const zone = "Europe/Berlin";

test("an instant is believed up to an hour ahead of the clock, for clocks are put right by minutes", () => {
  expect(isAheadOf(now, now)).toBe(false);
  expect(isAheadOf(now - 20 * 365 * 24 * hour, now)).toBe(false);
  expect(isAheadOf(now + hour, now)).toBe(false);
  expect(isAheadOf(now + hour + 1, now)).toBe(true);
});

test("the day of something past is never later than today, and unknown where the clock stood ahead", () => {
  const lateEvening = Date.UTC(2026, 10, 28, 22, 30);
  expect(notedOn(lateEvening - 24 * hour, lateEvening, zone)).toBe("2026-11-27");
  expect(notedOn(lateEvening + hour, lateEvening, zone)).toBe("2026-11-28");
  expect(notedOn(Date.UTC(2036, 2, 4), lateEvening, zone)).toBe("ahead");
  expect(sayNoted(now, now, zone)).toBe("Sat 28 Nov 2026, 19:00");
  expect(sayNoted(Date.UTC(2036, 2, 4, 18), now, zone)).toBe(
    "Tue 4 Mar 2036, 19:00 by a clock that stood ahead",
  );
});

test("tomorrow is a date something may have, the day after it is asked about", () => {
  expect(isAfterTomorrow("2026-11-29", "2026-11-28")).toBe(false);
  expect(isAfterTomorrow("2026-11-30", "2026-11-28")).toBe(true);
  expect(isAfterTomorrow("2027-01-01", "2026-12-31")).toBe(false);
  expect(askDate("session", "2036-03-04")).toBe(
    "This session is dated Tue 4 Mar 2036, after tomorrow. Is the date right?",
  );
});

test("tomorrow is over everywhere on earth when it is over in the last zone", () => {
  // IANA tz database: Etc/GMT+12 is twelve hours behind UTC, no zone is further behind.
  const lastMinute = instantOf("2026-11-29", 23, "Etc/GMT+12") + 59 * 60_000;
  expect(endOfTomorrow("2026-11-28") - lastMinute).toBe(60_000);
});

test("a date is in doubt after tomorrow, and where a clock of a year before the app gave it, but not where the driver did", () => {
  const today = "2026-11-28";
  const doubt = (date: string, createdAt: number) => dateDoubt({ date, createdAt }, today);
  const now = Date.UTC(2026, 10, 28, 18);
  const early = Date.UTC(2016, 6, 3, 1);
  expect(doubt("2036-03-04", now)).toBe("ahead");
  expect(doubt("2026-11-29", now)).toBeUndefined();
  expect(doubt("2016-07-03", early)).toBe("early");
  // Before 04:00 the practice day is the one before.
  expect(doubt("2016-07-02", early)).toBe("early");
  expect(doubt("2016-07-03", now)).toBeUndefined();
  expect(doubt("2026-11-28", early)).toBeUndefined();
  expect(doubt("2036-03-04", early)).toBe("ahead");
  expect(doubt("2026-03-10", Date.UTC(2026, 2, 10))).toBeUndefined();
});

test("while the clock shows a day before this version, no right date is asked about", () => {
  const early = Date.UTC(2016, 6, 3, 18);
  expect(isDateAsked("2026-11-28", "2016-07-03", early)).toBe(false);
  expect(isDateAsked("2036-03-04", "2026-11-28", Date.UTC(2026, 10, 28, 18))).toBe(true);
});
