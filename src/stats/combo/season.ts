import { addDays, type CalendarDate } from "#domain";

/** Days that a driver looks back over where nothing else is asked for: twelve weeks. */
export const SEASON_DAYS = 84;

/** The first of the twelve weeks that end with a day. */
export function seasonBegins(today: CalendarDate): CalendarDate {
  return addDays(today, 1 - SEASON_DAYS);
}
