import { digestsOfAll, pages, preferences, type ReadOnlyLogbook, references, targets } from "#db";
import { type CalendarDate, grouped, type Preferences } from "#domain";
import type { WeekCombo } from "#stats";
import { digestMaker } from "../digestMaker.ts";
import { idsInDoubt } from "./idsInDoubt.ts";

/** Every combo with a session, with all that its figures rest on, and the driver's choices. */
export interface WholeBook {
  readonly combos: readonly WeekCombo[];
  readonly preferences: Preferences;
}

/** Reads all combos' figures, as of today, in as many reads as one combo's would take. */
export async function wholeBook(book: ReadOnlyLogbook, today: CalendarDate): Promise<WholeBook> {
  const beside = await besideTheLaps(book);
  const all = await digestsOfAll(book, digestMaker(beside.preferences));
  const inDoubt = await idsInDoubt(book, today);
  const counted = all.filter(({ sessionId }) => !inDoubt.has(sessionId));
  const digests = grouped(counted, ({ comboId }) => comboId);
  const ofCombo = <R extends { readonly comboId: string }>(rows: readonly R[]) =>
    grouped(rows, ({ comboId }) => comboId);
  const [pagesOf, targetsOf, referencesOf] = [
    ofCombo(beside.pages),
    ofCombo(beside.targets),
    ofCombo(beside.references),
  ];
  return {
    combos: [...digests].map(([comboId, own]) => ({
      comboId,
      digests: own.map(({ digest }) => digest),
      pages: pagesOf.get(comboId) ?? [],
      targets: targetsOf.get(comboId) ?? [],
      references: referencesOf.get(comboId) ?? [],
    })),
    preferences: beside.preferences,
  };
}

/** The rows beside the laps, few in any logbook. */
async function besideTheLaps(book: ReadOnlyLogbook) {
  const [pageRows, targetRows, referenceRows, chosen] = await Promise.all([
    pages(book),
    targets(book),
    references(book),
    preferences(book),
  ]);
  return { pages: pageRows, targets: targetRows, references: referenceRows, preferences: chosen };
}
