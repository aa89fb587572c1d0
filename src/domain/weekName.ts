import { addDays, isoWeek, weekStart } from "./calendar.ts";
import type { CalendarDate } from "./rows.ts";

/** A week of ISO 8601 as it is written: "2026-W47". */
export type WeekName = string;

const shape = /^(\d{4})-W(\d{2})$/;

/** The week a date lies in: 2027-01-01 lies in "2026-W53". */
export function weekName(date: CalendarDate): WeekName {
  const { year, week } = isoWeek(date);
  return `${String(year).padStart(4, "0")}-W${String(week).padStart(2, "0")}`;
}

/** The Monday a week begins with; undefined for what is no week: 2025 has no week 53. */
export function mondayOf(week: WeekName): CalendarDate | undefined {
  const parts = shape.exec(week);
  const year = parts?.[1] ?? "";
  if (parts === null || Number(year) < 2 || Number(year) > 9998) return undefined;
  // The 4th of January always lies in week 1.
  const monday = addDays(weekStart(`${year}-01-04`), 7 * (Number(parts[2]) - 1));
  return weekName(monday) === week ? monday : undefined;
}
