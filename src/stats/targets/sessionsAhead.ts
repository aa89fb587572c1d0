import { addDays, type CalendarDate } from "#domain";

/**
 * Days on which sessions are likely to come at a rate, evenly spaced, each in the middle of its share of the time; none
 * before tomorrow.
 * @param sessionsAWeek above 0
 * @param days how far is looked ahead
 * @example sessionsAhead(2, "2026-11-02", 7) // Wed 4 Nov and Sat 7 Nov 2026
 */
export function sessionsAhead(sessionsAWeek: number, today: CalendarDate, days: number): CalendarDate[] {
  const apart = 7 / sessionsAWeek;
  const count = Math.floor(days / apart + 0.5);
  return Array.from({ length: count }, (_, index) =>
    addDays(today, Math.max(1, Math.min(days, Math.round((index + 0.5) * apart)))),
  );
}
