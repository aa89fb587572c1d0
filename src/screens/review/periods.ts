import { addDays, type CalendarDate, daysBetween } from "#domain";
import type { Period } from "#state/address.ts";

/** First and last day looked at; absent means open. */
export interface Days {
  readonly from?: CalendarDate;
  readonly to?: CalendarDate;
}

export const rollingPeriods = [
  { kind: "4w", word: "4 weeks", days: 28, phrase: "the last 4 weeks" },
  { kind: "12w", word: "12 weeks", days: 84, phrase: "the last 12 weeks" },
  { kind: "year", word: "a year", days: 365, phrase: "the last year" },
] as const;

/** The days of a period; a rolling one ends today and has no last day, so that a session dated tomorrow still counts. */
export function daysOf(period: Period, today: CalendarDate): Days {
  if (period.kind === "dates") return { from: period.from, to: period.to };
  const rolling = rollingPeriods.find(({ kind }) => kind === period.kind);
  return rolling === undefined ? {} : { from: addDays(today, 1 - rolling.days) };
}

/**
 * Laps driven in each seven days from the first day of a period, or the first one driven where it is open, to its end.
 * @param driven days with laps, oldest first
 */
export function lapsByWeek(
  driven: readonly { readonly date: CalendarDate; readonly laps: number }[],
  { from, to }: Days,
  today: CalendarDate,
): number[] {
  const [first, last] = [from ?? driven[0]?.date ?? today, driven.at(-1)?.date ?? today];
  const until = to ?? (last > today ? last : today);
  const weeks = Array.from({ length: Math.floor(Math.max(0, daysBetween(first, until)) / 7) + 1 }, () => 0);
  for (const { date, laps } of driven) {
    const week = Math.floor(daysBetween(first, date) / 7);
    if (weeks[week] !== undefined) weeks[week] += laps;
  }
  return weeks;
}
