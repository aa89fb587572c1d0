import { notePurged, purgeBefore, purgeDeleted } from "#db";
import { practiceDay } from "#domain";
import type { Opened, Surroundings } from "#live";

/**
 * Removes for good what was deleted more than 30 opened days ago, unless that was done today already. Gives the number
 * removed. Throws LedgerFault.
 */
export async function purgeOnceADay(
  { shelf, book, entry }: Opened,
  { clock, zone }: Surroundings,
): Promise<number> {
  const today = practiceDay(clock(), zone(), 4);
  const logbook = await shelf.logbooks.get(entry.name);
  const before = logbook && purgeBefore(logbook);
  if (before === undefined || logbook?.purgedOn === today) return 0;
  const removed = await purgeDeleted(book, before);
  await notePurged(shelf, entry.name, today);
  return removed;
}
