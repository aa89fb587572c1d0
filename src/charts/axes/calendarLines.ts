import { type CalendarDate, monthNames } from "#domain";
import type { PracticeDay } from "../calendar/calendarTable.ts";

/** A month, or half of one, as a line of the calendar. */
export interface CalendarLine {
  readonly id: string;
  readonly label: string;
  /** Days of the month, first and last. */
  readonly first: number;
  readonly last: number;
  readonly days: readonly { readonly day: number; readonly date: CalendarDate; readonly laps: number }[];
}

const mostStrokes = 500;
const lapsSteps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** How many laps a stroke stands for, so that no calendar draws more than 500 of them. */
export function strokesFor(days: readonly PracticeDay[]): number {
  const strokes = (laps: number) => days.reduce((sum, day) => sum + Math.ceil(day.laps / laps), 0);
  return lapsSteps.find((laps) => strokes(laps) <= mostStrokes) ?? 5000;
}

/** What the lines of a calendar are made from. */
export interface CalendarSpan {
  readonly days: readonly PracticeDay[];
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** Where there is little room a month takes two lines. */
  readonly isHalved: boolean;
  readonly mostMonths: number;
}

/** The lines from one day's month to another's, oldest first; months without a lap too, so that gaps are seen. */
export function calendarLines({ days, from, to, isHalved, mostMonths }: CalendarSpan): CalendarLine[] {
  const last = monthOf(to);
  const lines: CalendarLine[] = [];
  for (let month = Math.max(monthOf(from), last - mostMonths + 1); month <= last; month++) {
    const [year, inYear] = [Math.floor(month / 12), month % 12];
    const key = `${String(year).padStart(4, "0")}-${String(inYear + 1).padStart(2, "0")}`;
    const own = days
      .filter(({ date }) => date.startsWith(key))
      .map(({ date, laps }) => ({ day: Number(date.slice(8)), date, laps }));
    const name = `${(monthNames[inYear] ?? "").slice(0, 3)}${inYear === 0 ? ` ${year}` : ""}`;
    const length = new Date(Date.UTC(year, inYear + 1, 0)).getUTCDate();
    const halves = isHalved
      ? [
          [1, 16],
          [17, length],
        ]
      : [[1, length]];
    for (const [first = 1, end = length] of halves)
      lines.push({
        id: `${key}-${first}`,
        label: isHalved ? `${first === 1 ? `${name} ` : ""}${first}–${end}` : name,
        first,
        last: end,
        days: own.filter(({ day }) => day >= first && day <= end),
      });
  }
  return lines;
}

function monthOf(date: CalendarDate): number {
  return Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7)) - 1;
}
