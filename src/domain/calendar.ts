/**
 * Arithmetic on local calendar dates "yyyy-MM-dd", years 0001 to 9999. A date here is a square of the calendar, not
 * an instant: no time zone and no change of clocks can move it.
 */
import type { CalendarDate } from "./rows.ts";

const dayMs = 86_400_000;
const shape = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Whether the text is a date that exists: 2026-02-30 is none. */
export function isCalendarDate(text: string): text is CalendarDate {
  const parts = shape.exec(text);
  if (parts === null) return false;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  return year >= 1 && dateOfDay(dayOf(year, month, day)) === text;
}

function dayOf(year: number, month: number, day: number): number {
  // Date.UTC takes the years 0 to 99 for 1900 to 1999, setUTCFullYear does not.
  return Math.round(new Date(0).setUTCFullYear(year, month - 1, day) / dayMs);
}

function dateOfDay(day: number): CalendarDate {
  return new Date(day * dayMs).toISOString().slice(0, 10);
}

/** Days since 1970-01-01. */
function dayNumber(date: CalendarDate): number {
  if (!isCalendarDate(date)) throw new RangeError(`not a calendar date: ${date}`);
  return dayOf(Number(date.slice(0, 4)), Number(date.slice(5, 7)), Number(date.slice(8)));
}

/** The date so many days later (earlier when negative). */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  const moved = dateOfDay(dayNumber(date) + days);
  if (!isCalendarDate(moved))
    throw new RangeError(`${days} days from ${date} is outside the years 1 to 9999`);
  return moved;
}

/** Days from one date to another; negative when `to` comes first. */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return dayNumber(to) - dayNumber(from);
}

/** For sorting: negative when `a` comes before `b`. */
export function compareDates(a: CalendarDate, b: CalendarDate): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Day of the week, 1 = Monday to 7 = Sunday (ISO 8601). */
export function weekday(date: CalendarDate): number {
  return ((((dayNumber(date) + 3) % 7) + 7) % 7) + 1;
}

/** The Monday of the date's week. */
export function weekStart(date: CalendarDate): CalendarDate {
  return addDays(date, 1 - weekday(date));
}

/** Week of ISO 8601: weeks begin on Monday, week 1 has the year's first Thursday. 2005-01-01 is 2004, week 53. */
export function isoWeek(date: CalendarDate): { readonly year: number; readonly week: number } {
  const thursday = addDays(date, 4 - weekday(date));
  const newYear = `${thursday.slice(0, 4)}-01-01`;
  return { year: Number(thursday.slice(0, 4)), week: Math.floor(daysBetween(newYear, thursday) / 7) + 1 };
}
