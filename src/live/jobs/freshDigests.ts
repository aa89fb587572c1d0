import { digestsOfCombo, type ReadOnlyLogbook } from "#db";
import type { CalendarDate, Id, Preferences } from "#domain";
import type { SessionDigest } from "#stats";
import { digestMaker } from "../digestMaker.ts";
import { idsInDoubt } from "./idsInDoubt.ts";

/**
 * Figures of every session of a combo whose date is in no doubt, oldest first. Those that are stale are made from their
 * laps, and kept where the logbook may be written.
 */
export async function freshDigests(
  book: ReadOnlyLogbook,
  comboId: Id,
  preferences: Preferences,
  today: CalendarDate,
): Promise<SessionDigest[]> {
  const digests = await digestsOfCombo(book, comboId, digestMaker(preferences));
  const inDoubt = await idsInDoubt(book, today);
  return digests.flatMap(({ sessionId, digest }) => (inDoubt.has(sessionId) ? [] : [digest]));
}
