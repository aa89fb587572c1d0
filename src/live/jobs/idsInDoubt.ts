import { type ReadOnlyLogbook, sessionsInDoubt } from "#db";
import type { CalendarDate, Id } from "#domain";

/** The sessions that figures are without, as of today, because their date is in doubt. */
export async function idsInDoubt(book: ReadOnlyLogbook, today: CalendarDate): Promise<ReadonlySet<Id>> {
  return new Set((await sessionsInDoubt(book, today)).map(({ id }) => id));
}
