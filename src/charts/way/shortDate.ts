import { type CalendarDate, monthNames } from "#domain";

/** A day as a picture has room for it: "3 Aug". The words beside it tell the whole date. */
export function shortDate(date: CalendarDate): string {
  return `${Number(date.slice(8))} ${(monthNames[Number(date.slice(5, 7)) - 1] ?? "").slice(0, 3)}`;
}
