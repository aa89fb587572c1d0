import { onPage, presentPage } from "#combo";
import { pagesOfCombo, preferences, type ReadOnlyLogbook } from "#db";
import type { CalendarDate, Id } from "#domain";
import type { SessionDigest } from "#stats";
import { freshDigests } from "./freshDigests.ts";

/** Figures of the sessions of a combo whose times compare with those of today, oldest first. */
export async function presentDigests(
  book: ReadOnlyLogbook,
  { comboId, today }: { readonly comboId: Id; readonly today: CalendarDate },
): Promise<SessionDigest[]> {
  const [pages, chosen] = await Promise.all([pagesOfCombo(book, comboId), preferences(book)]);
  return onPage(presentPage(pages, today), await freshDigests(book, comboId, chosen, today));
}
