import { defaultPreferences } from "#db";
import type { Run, Session } from "#domain";
import type { SessionCounts } from "#files";
import { sessionDigest } from "#stats";

/** What a table of sessions says of one: as its page and the list have it, which no choice of the driver moves. */
export function sessionCounts(session: Session, runs: readonly Run[]): SessionCounts {
  const { counts, clean, bestClean } = sessionDigest(session, runs, defaultPreferences);
  return { laps: counts.driven, clean, best: bestClean };
}
