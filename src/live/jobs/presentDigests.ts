import { onPage, presentPage } from "#combo";
import { pagesOfCombo, preferences, type ReadOnlyLogbook } from "#db";
import type { AssumedPractice, CalendarDate, Id } from "#domain";
import type { SessionDigest } from "#stats";
import { freshDigests } from "./freshDigests.ts";

/** Figures of the sessions of a combo: those whose times compare with those of today, and all. */
export interface PresentDigests {
  readonly page: readonly SessionDigest[];
  readonly driven: readonly SessionDigest[];
  /** Practice that the driver counts on with the combo. */
  readonly practice: AssumedPractice | undefined;
}

/** What a forecast about the present page of a combo is made from, oldest first. */
export async function presentDigests(
  book: ReadOnlyLogbook,
  { comboId, today }: { readonly comboId: Id; readonly today: CalendarDate },
): Promise<PresentDigests> {
  const [pages, chosen, combo] = await Promise.all([
    pagesOfCombo(book, comboId),
    preferences(book),
    book.tables.combos.get(comboId),
  ]);
  const driven = await freshDigests(book, comboId, chosen, today);
  return { page: onPage(presentPage(pages, today), driven), driven, practice: combo?.practice };
}
