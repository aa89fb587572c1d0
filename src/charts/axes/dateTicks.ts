import { addDays, type CalendarDate, daysBetween, monthNames, weekStart } from "#domain";

/** A tick of a calendar axis. */
export interface DateTick {
  readonly date: CalendarDate;
  readonly label: string;
}

const daySteps = [1, 2, 7, 14, 28];
const monthSteps = [1, 2, 3, 6, 12, 24, 60, 120];

/**
 * Ticks between two dates: single days, Mondays, then firsts of months, whichever gives no more than wanted.
 * @returns in order, none before `from` or after `to`; "3 Aug" for days, "Aug" or "2026" (January) for months
 */
export function dateTicks(from: CalendarDate, to: CalendarDate, wanted: number): readonly DateTick[] {
  const days = daysBetween(from, to);
  const dayStep = daySteps.find((step) => days / step <= wanted - 1);
  return dayStep === undefined ? monthTicks(from, to, wanted) : dayTicks(from, to, dayStep);
}

function dayTicks(from: CalendarDate, to: CalendarDate, step: number): DateTick[] {
  const ticks: DateTick[] = [];
  const monday = weekStart(from);
  const start = step < 7 || monday === from ? from : addDays(monday, 7);
  for (let date = start; date <= to; date = addDays(date, step)) {
    ticks.push({ date, label: `${Number(date.slice(8))} ${monthOf(date)}` });
  }
  return ticks;
}

function monthTicks(from: CalendarDate, to: CalendarDate, wanted: number): DateTick[] {
  const first = monthNumber(from) + (from.endsWith("-01") ? 0 : 1);
  const last = monthNumber(to);
  const step =
    monthSteps.find((size) => (last - first) / size <= wanted - 1) ??
    Math.ceil((last - first) / (wanted - 1) / 120) * 120;
  const ticks: DateTick[] = [];
  for (let month = Math.ceil(first / step) * step; month <= last; month += step) {
    const year = Math.floor(month / 12);
    const date = `${String(year).padStart(4, "0")}-${String((month % 12) + 1).padStart(2, "0")}-01`;
    ticks.push({ date, label: month % 12 === 0 ? String(year) : monthOf(date) });
  }
  return ticks;
}

function monthNumber(date: CalendarDate): number {
  return Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7)) - 1;
}

function monthOf(date: CalendarDate): string {
  return (monthNames[Number(date.slice(5, 7)) - 1] ?? "").slice(0, 3);
}
