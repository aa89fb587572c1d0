import { pagesOfCombo, targetsOfCombo } from "#db";
import { type CalendarDate, type Id, pagesAsOf, type Target } from "#domain";
import { useRows } from "#live";

/** The targets a combo is driven for today: of its present page, not archived, their date not gone by. */
export function useTargetsNow(comboId: Id, today: CalendarDate): readonly Target[] | undefined {
  return useRows(
    async (book) => {
      const [targets, pages] = await Promise.all([
        targetsOfCombo(book, comboId),
        pagesOfCombo(book, comboId),
      ]);
      const pageFrom = pagesAsOf(pages, today).at(-1)?.from ?? Number.NEGATIVE_INFINITY;
      return targets.filter(
        ({ archivedAt, setAt, by = today }) => archivedAt === undefined && setAt >= pageFrom && by >= today,
      );
    },
    [comboId, today],
  );
}
