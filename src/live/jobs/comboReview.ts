import { onPage, presentPage } from "#combo";
import { pagesOfCombo, preferences, type ReadOnlyLogbook, referencesOfCombo, targetsOfCombo } from "#db";
import type { CalendarDate, Id } from "#domain";
import { type ComboReview, comboReview } from "#stats";
import { freshDigests } from "./freshDigests.ts";
import type { JobRun } from "./job.ts";
import { keptCurve } from "./keptCurve.ts";

export interface ComboReviewDetails {
  readonly comboId: Id;
  /** First and last day, both counted; absent means open. */
  readonly period: { readonly from?: CalendarDate; readonly to?: CalendarDate };
  readonly today: CalendarDate;
}

/** What the weeks say about one combo. */
export const runComboReview: JobRun<ComboReviewDetails, ComboReview> = async (
  book,
  { comboId, period, today },
) => {
  const { pages, targets, references, chosen } = await besideTheLaps(book, comboId);
  const digests = await freshDigests(book, comboId, chosen, today);
  const page = onPage(presentPage(pages, today), digests);
  return comboReview({
    curve: await keptCurve(book, { comboId, page, driven: digests, today }),
    comboId,
    digests,
    pages,
    period,
    today,
    targets,
    references,
    preferences: chosen,
  });
};

/** The rows that the figures of a combo rest on besides its laps. */
async function besideTheLaps(book: ReadOnlyLogbook, comboId: Id) {
  const [pages, targets, references, chosen] = await Promise.all([
    pagesOfCombo(book, comboId),
    targetsOfCombo(book, comboId),
    referencesOfCombo(book, comboId),
    preferences(book),
  ]);
  return { pages, targets, references, chosen };
}
