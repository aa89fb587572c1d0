import { digestsOfCombo, type ReadOnlyLogbook } from "#db";
import type { Id, Preferences } from "#domain";
import type { SessionDigest } from "#stats";
import { digestMaker } from "../digestMaker.ts";

/**
 * Figures of every session of a combo, oldest first. Those that are stale are made from their laps, and kept where the
 * logbook may be written.
 */
export async function freshDigests(
  book: ReadOnlyLogbook,
  comboId: Id,
  preferences: Preferences,
): Promise<SessionDigest[]> {
  const digests = await digestsOfCombo(book, comboId, digestMaker(preferences));
  return digests.map(({ digest }) => digest);
}
