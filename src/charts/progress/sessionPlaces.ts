import { type CalendarDate, daysBetween } from "#domain";

const epoch = "1970-01-01";

/** A date on the calendar axis: days since 1970. */
export function dayOf(date: CalendarDate): number {
  return daysBetween(epoch, date);
}

/**
 * Where sessions stand on the calendar axis: at their day; several of one day side by side about it, in the order of
 * their start, so that none hides another.
 */
export function sessionPlaces(
  sessions: readonly { readonly id: string; readonly date: CalendarDate; readonly startedAt: number }[],
): ReadonlyMap<string, number> {
  const days = new Map<CalendarDate, { id: string; startedAt: number }[]>();
  for (const { id, date, startedAt } of sessions) {
    const day = days.get(date) ?? [];
    day.push({ id, startedAt });
    days.set(date, day);
  }
  const places = new Map<string, number>();
  for (const [date, day] of days) {
    day.sort((a, b) => a.startedAt - b.startedAt || (a.id < b.id ? -1 : 1));
    day.forEach((session, index) => {
      places.set(session.id, dayOf(date) + (index + 0.5) / day.length - 0.5);
    });
  }
  return places;
}

/** Between the last session of an older page and the first of the present one; undefined where either is missing. */
export function pageRuleAt(
  placed: readonly { readonly x: number; readonly session: { readonly isPresentPage: boolean } }[],
): number | undefined {
  const present = placed.find(({ session }) => session.isPresentPage)?.x;
  const older = placed.findLast(({ session }) => !session.isPresentPage)?.x;
  return present === undefined || older === undefined ? undefined : (present + older) / 2;
}
