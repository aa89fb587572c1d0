import { believedUpTo, newestStampIn, type ReadOnlyLogbook } from "#db";
import { isClockWrong } from "#domain";

/**
 * The newest stamp of a logbook, where it lies ahead of this device's clock; undefined where none does, and where the
 * clock shows a day before this version was made, so that it cannot be right itself.
 */
export async function stampAhead(book: ReadOnlyLogbook, now: number): Promise<number | undefined> {
  if (isClockWrong(now)) return undefined;
  const newest = await newestStampIn(book);
  return newest > believedUpTo(now) ? newest : undefined;
}
