/**
 * What a clock that once stood wrong leaves behind: instants and days that lie ahead of now. The one home of what is
 * believed of them. Pure: now and today are handed in.
 */
import { addDays } from "./calendar.ts";
import type { CalendarDate } from "./rows.ts";
import { sayDate } from "./sayDate.ts";
import { practiceDay, timeOfDay } from "./zones.ts";

const hourMs = 3_600_000;
const dayMs = 24 * hourMs;

/**
 * The day from which rows carry the stamps they had. A clock that shows an earlier one is wrong, and what was made
 * under a clock that stood ahead was made on that day or later.
 */
export const stampsKeptSince = Date.UTC(2026, 10, 28);

/** Whether this device's clock (epoch ms) is known to be wrong: it shows an instant before this version was made. */
export function isClockWrong(now: number): boolean {
  return now < stampsKeptSince;
}

/** "This device’s clock says Sun 3 Jul 2016, which is before this version of Lap Ledger was made." */
export function sayClockWrong(today: CalendarDate): string {
  return `This device’s clock says ${sayDate(today)}, which is before this version of Lap Ledger was made.`;
}

/** Clocks are put right by minutes now and then, and that is not worth a word. */
const allowedMs = hourMs;

/**
 * Whether an instant that was noted in the past (epoch ms) lies ahead of now, so that the clock stood wrong then or
 * stands wrong now: when it really was cannot be told.
 */
export function isAheadOf(at: number, now: number): boolean {
  return at - now > allowedMs;
}

/** The day of an instant noted in the past, never later than today; "ahead" where it cannot be told. */
export type NotedOn = CalendarDate | "ahead";

/** The calendar day, in a zone, on which something past was noted. */
export function notedOn(at: number, now: number, zone: string): NotedOn {
  return isAheadOf(at, now) ? "ahead" : practiceDay(Math.min(at, now), zone, 0);
}

/** "Wed 14 Oct 2026, 19:05"; with a word on it where this clock cannot believe the instant. */
export function sayNoted(at: number, now: number, zone: string): string {
  const said = `${sayDate(practiceDay(at, zone, 0))}, ${timeOfDay(at, zone)}`;
  return isAheadOf(at, now) ? `${said} by a clock that stood ahead` : said;
}

/** Whether a day is later than tomorrow. Tomorrow itself has begun somewhere on earth, so it may be the date of something past. */
export function isAfterTomorrow(date: CalendarDate, today: CalendarDate): boolean {
  return date > addDays(today, 1);
}

/**
 * Whether a date that the driver gives, or gave, is asked about: it lies after tomorrow, by a clock (epoch ms, with the day it
 * shows) that can tell.
 */
export function isDateAsked(date: CalendarDate, today: CalendarDate, now: number): boolean {
  return isAfterTomorrow(date, today) && !isClockWrong(now);
}

/** The question a date later than tomorrow raises: "This session is dated Tue 4 Mar 2036, after tomorrow. Is the date right?" */
export function askDate(thing: string, date: CalendarDate): string {
  return `This ${thing} is dated ${sayDate(date)}, after tomorrow. Is the date right?`;
}

/** The instant (epoch ms) at which tomorrow is over everywhere on earth: 12:00 UTC of the day after it. */
export function endOfTomorrow(today: CalendarDate): number {
  return Date.parse(`${addDays(today, 2)}T00:00:00Z`) + dayMs / 2;
}
