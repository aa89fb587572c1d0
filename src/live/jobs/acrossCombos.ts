import type { CalendarDate } from "#domain";
import { acrossCombos, type ComboLine } from "#stats";
import type { JobRun } from "./job.ts";
import { keptSeason } from "./keptSeason.ts";
import { wholeBook } from "./wholeBook.ts";

export interface AcrossCombosDetails {
  readonly today: CalendarDate;
}

/** All combos side by side, each by its present page. */
export const runAcrossCombos: JobRun<AcrossCombosDetails, ComboLine[]> = async (book, { today }) => {
  const { combos } = await wholeBook(book, today);
  const asked = combos.map(async (combo) => ({ ...combo, season: await keptSeason(book, combo, today) }));
  return acrossCombos(await Promise.all(asked), today);
};
