import { defaultPreferences } from "#db";
import type { Run, Session } from "#domain";
import { type CountedSession, countSession } from "#stats";

/** What a table of sessions says of one: as its page and the list have it, which no choice of the driver moves. */
export function sessionCounts(session: Session, runs: readonly Run[]): CountedSession {
  return countSession(session, runs, defaultPreferences);
}
