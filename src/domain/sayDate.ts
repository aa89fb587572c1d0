import { weekday } from "./calendar.ts";
import type { CalendarDate } from "./rows.ts";

/** English month names; their first three letters are the short ones. */
export const monthNames = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

const weekdayNames = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

function wordsOf(date: CalendarDate) {
  const day = weekdayNames[weekday(date) - 1] ?? "";
  const month = monthNames[Number(date.slice(5, 7)) - 1] ?? "";
  return { day, month, number: Number(date.slice(8)), year: Number(date.slice(0, 4)) };
}

/** "Wed 14 Oct 2026" */
export function sayDate(date: CalendarDate): string {
  const { day, month, number, year } = wordsOf(date);
  return `${day.slice(0, 3)} ${number} ${month.slice(0, 3)} ${year}`;
}

/** "Wednesday 14 October" */
export function sayDay(date: CalendarDate): string {
  const { day, month, number } = wordsOf(date);
  return `${day} ${number} ${month}`;
}

/** "14 Oct"; with the year where it is not the one of another date: "14 Oct 2025" */
export function sayShortDate(date: CalendarDate, beside: CalendarDate): string {
  const { month, number, year } = wordsOf(date);
  const isOther = date.slice(0, 4) !== beside.slice(0, 4);
  return `${number} ${month.slice(0, 3)}${isOther ? ` ${year}` : ""}`;
}
