import { daysOpened, notePurged, purgeDeleted } from "#db";
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
  if (logbook === undefined || logbook.purgedOn === today) return 0;
  const before = (await shelf.deleted.get(entry.name))?.waiting ?? new Map();
  const { removed, waiting } = await purgeDeleted(book, before, daysOpened(logbook));
  await notePurged(shelf, entry.name, today, waiting);
  return removed;
}
