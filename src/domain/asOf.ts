import { isAfterTomorrow } from "./ahead.ts";
import { addDays } from "./calendar.ts";
import type { CalendarDate, Session } from "./rows.ts";

/** No version of the app was made before this instant (epoch ms): a clock that showed an earlier one stood wrong. */
export const firstVersionAfter = Date.UTC(2026, 0, 1);

/** Why a session's date cannot be believed: "ahead", after tomorrow; "early", given by a clock of a year before the app. */
export type DateDoubt = "ahead" | "early";

/**
 * The one home of which sessions figures are of: all whose date is in no doubt, as of today. One in doubt is in no figure and
 * stretches no axis until its date is put right; the page counts it. A driver may have given an early date to what was driven
 * early; only where it is the day the clock showed does it come from the clock.
 */
export function dateDoubt(
  { date, createdAt }: Pick<Session, "date" | "createdAt">,
  today: CalendarDate,
): DateDoubt | undefined {
  if (isAfterTomorrow(date, today)) return "ahead";
  if (createdAt >= firstVersionAfter) return undefined;
  const shown = new Date(createdAt).toISOString().slice(0, 10);
  // The zone, and the hour at which a practice day begins, move a day by one at most.
  return date >= addDays(shown, -1) && date <= addDays(shown, 1) ? "early" : undefined;
}
