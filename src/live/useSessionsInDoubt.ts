import { sessionsInDoubt } from "#db";
import { type CalendarDate, type DateDoubt, dateDoubt, type Id } from "#domain";
import { printAddress } from "#state/address.ts";
import { useRows } from "./useRows.ts";

/** A session whose date is in doubt, and the address of its page. */
export interface SessionInDoubt {
  readonly id: Id;
  readonly date: CalendarDate;
  readonly doubt: DateDoubt | undefined;
  readonly href: string;
}

/** The sessions whose date is in doubt, of one combo or of all, oldest first: all figures are without them. */
export function useSessionsInDoubt(today: CalendarDate, comboId?: Id): readonly SessionInDoubt[] {
  const sessions = useRows((book) => sessionsInDoubt(book, today), [today]);
  return (sessions ?? [])
    .filter((session) => comboId === undefined || session.comboId === comboId)
    .map((session) => ({
      id: session.id,
      date: session.date,
      doubt: dateDoubt(session, today),
      href: printAddress({ place: "log", sessionId: session.id }),
    }));
}
