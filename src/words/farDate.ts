import { type CalendarDate, daysBetween, monthNames, sayDate } from "#domain";

/** Days up to which a date is told as such: six weeks. */
const NEAR = 42;
/** Days up to which the third of a month is told; beyond it the month. Our own choice. */
const THIRDS = 120;

/**
 * A date to come as exactly as a forecast can know it: the day within six weeks, then the third of its month, beyond four
 * months the month with its year. No seasons: they are others on the other half of the earth.
 * @example sayFarDate("2027-01-03", "2026-11-29") // "Sun 3 Jan 2027"
 * @example sayFarDate("2027-01-18", "2026-11-29") // "mid-January"
 * @example sayFarDate("2027-04-05", "2026-11-29") // "April 2027"
 */
export function sayFarDate(date: CalendarDate, today: CalendarDate): string {
  const away = daysBetween(today, date);
  if (away <= NEAR) return sayDate(date);
  const month = monthNames[Number(date.slice(5, 7)) - 1] ?? "";
  return away <= THIRDS ? thirdOf(month, Number(date.slice(8))) : `${month} ${date.slice(0, 4)}`;
}

function thirdOf(month: string, day: number): string {
  if (day <= 10) return `early ${month}`;
  return day <= 20 ? `mid-${month}` : `late ${month}`;
}
