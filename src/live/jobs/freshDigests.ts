import { digestsOfCombo, type ReadOnlyLogbook } from "#db";
import { type CalendarDate, type Id, type Preferences, sessionsAsOf } from "#domain";
import type { SessionDigest } from "#stats";
import { digestMaker } from "../digestMaker.ts";

/**
 * Figures of every session of a combo dated up to tomorrow, oldest first. Those that are stale are made from their laps, and kept where the
 * logbook may be written.
 */
export async function freshDigests(
  book: ReadOnlyLogbook,
  comboId: Id,
  preferences: Preferences,
  today: CalendarDate,
): Promise<SessionDigest[]> {
  const digests = await digestsOfCombo(book, comboId, digestMaker(preferences));
  return sessionsAsOf(
    digests.map(({ digest }) => digest),
    today,
  );
}
