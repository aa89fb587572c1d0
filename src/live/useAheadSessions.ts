import { sessionsAhead } from "#db";
import type { CalendarDate, Id } from "#domain";
import { printAddress } from "#state/address.ts";
import { useRows } from "./useRows.ts";

/** A session dated after tomorrow, and the address of its page. */
export interface AheadSession {
  readonly id: Id;
  readonly date: CalendarDate;
  readonly href: string;
}

/** The sessions dated after tomorrow, of one combo or of all, oldest first: all figures are without them. */
export function useAheadSessions(today: CalendarDate, comboId?: Id): readonly AheadSession[] {
  const sessions = useRows((book) => sessionsAhead(book, today), [today]);
  return (sessions ?? [])
    .filter((session) => comboId === undefined || session.comboId === comboId)
    .map(({ id, date }) => ({ id, date, href: printAddress({ place: "log", sessionId: id }) }));
}
