import { endOfTomorrow, isAfterTomorrow } from "./ahead.ts";
import type { CalendarDate, Page } from "./rows.ts";

/**
 * The one home of which sessions figures are of: those dated up to tomorrow, as of today. What a clock that stood ahead
 * has dated later is in no figure and stretches no axis until its date is put right; the page counts it.
 */
export function sessionsAsOf<S extends { readonly date: CalendarDate }>(
  sessions: readonly S[],
  today: CalendarDate,
): S[] {
  return sessions.filter(({ date }) => !isAfterTomorrow(date, today));
}

/** Pages that have begun, as of today: one that begins after tomorrow would leave every session on an older page. */
export function pagesAsOf(pages: readonly Page[], today: CalendarDate): Page[] {
  const end = endOfTomorrow(today);
  return pages.filter(({ from }) => from < end);
}
