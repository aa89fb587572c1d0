import { type CalendarDate, daysBetween } from "#domain";

/** Days without a session that make a break. */
export const BREAK_DAYS = 10;

/** A stretch of days without driving. */
export interface Pause {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly days: number;
}

/** A session that has a usual lap, and the days driven after it in sessions too short for one, up to the next that has. */
export interface DrivenDays {
  readonly date: CalendarDate;
  readonly drivenSince?: readonly CalendarDate[] | undefined;
}

/** The longest pause from one session with a usual lap to the next, or to today: short sessions between end it too. */
export function longestPause({ date, drivenSince = [] }: DrivenDays, next: CalendarDate): Pause {
  const days = [date, ...drivenSince.filter((day) => day <= next), next];
  const pauses = days.slice(1).map((to, index): Pause => {
    const from = days[index] as CalendarDate;
    return { from, to, days: daysBetween(from, to) };
  });
  return pauses.reduce((longest, pause) => (pause.days > longest.days ? pause : longest));
}
