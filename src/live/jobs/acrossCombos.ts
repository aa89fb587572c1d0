import type { CalendarDate } from "#domain";
import { acrossCombos, type ComboLine } from "#stats";
import type { JobRun } from "./job.ts";
import { wholeBook } from "./wholeBook.ts";

export interface AcrossCombosDetails {
  readonly today: CalendarDate;
}

/** All combos side by side, each by its present page. */
export const runAcrossCombos: JobRun<AcrossCombosDetails, ComboLine[]> = async (book, { today }) => {
  const { combos } = await wholeBook(book, today);
  return acrossCombos(
    combos.map(({ comboId, digests, pages, targets, references }) => {
      const pageFrom = pages.reduce((latest, { from }) => Math.max(latest, from), Number.NEGATIVE_INFINITY);
      return {
        comboId,
        references,
        digests: digests.filter(({ startedAt }) => startedAt >= pageFrom),
        targets: targets.filter(({ setAt }) => setAt >= pageFrom),
      };
    }),
    today,
  );
};
