import { addDays, type CalendarDate } from "#domain";
import { dayOf } from "../progress/sessionPlaces.ts";
import { dateTicks } from "./dateTicks.ts";

/**
 * The calendar axis for places counted in days: a little air at both ends, ticks at days, Mondays or months.
 * @param days places, at least one
 * @param wanted most ticks
 */
export function calendarTicks(days: readonly number[], wanted: number) {
  const first = Math.min(...days);
  const last = Math.max(...days);
  const air = Math.max(0.75, (last - first) * 0.015);
  const domain: [number, number] = [first - air, last + air];
  const ticks = dateTicks(dateOf(Math.floor(first)), dateOf(Math.ceil(last)), Math.max(2, wanted));
  return {
    domain,
    ticks: ticks
      .map(({ date, label }) => ({ value: dayOf(date), label }))
      .filter(({ value }) => value >= domain[0] && value <= domain[1]),
  };
}

function dateOf(day: number): CalendarDate {
  return addDays("1970-01-01", day);
}
