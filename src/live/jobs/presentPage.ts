import { pagesOfCombo, preferences, type ReadOnlyLogbook } from "#db";
import { type CalendarDate, type Id, pagesAsOf } from "#domain";
import type { SessionDigest } from "#stats";
import { freshDigests } from "./freshDigests.ts";

/** Figures of the sessions of a combo whose times compare with those of today, oldest first. */
export async function presentPage(
  book: ReadOnlyLogbook,
  { comboId, today }: { readonly comboId: Id; readonly today: CalendarDate },
): Promise<SessionDigest[]> {
  const [pages, chosen] = await Promise.all([pagesOfCombo(book, comboId), preferences(book)]);
  const pageFrom = pagesAsOf(pages, today).at(-1)?.from ?? Number.NEGATIVE_INFINITY;
  const digests = await freshDigests(book, comboId, chosen, today);
  return digests.filter(({ startedAt }) => startedAt >= pageFrom);
}
