import {
  comboWithNames,
  cornerReviewsOfCombo,
  pagesOfCombo,
  preferences,
  type ReadOnlyLogbook,
  referencesOfCombo,
  runsOfSession,
  sessionOf,
  targetsOfCombo,
} from "#db";
import type { CalendarDate, Id } from "#domain";
import {
  type CornersInput,
  type CornersReport,
  cornersReport,
  type SessionDigest,
  sessionsForCorners,
} from "#stats";
import { freshDigests } from "./freshDigests.ts";
import type { JobRun } from "./job.ts";

export interface CornersDetails {
  readonly comboId: Id;
  readonly today: CalendarDate;
}

/** What the corners of a combo are worth; null where the combo is not there. */
export const runCorners: JobRun<CornersDetails, CornersReport | null> = async (book, details) => {
  const input = await cornersInput(book, details);
  return input && cornersReport(input);
};

/** What the corners of a combo are worked out from; null where the combo is not there. */
export async function cornersInput(
  book: ReadOnlyLogbook,
  { comboId, today }: CornersDetails,
): Promise<CornersInput | null> {
  const names = await comboWithNames(book, comboId);
  if (names === undefined) return null;
  const [pages, targets, references, chosen, reviews] = await Promise.all([
    pagesOfCombo(book, comboId),
    targetsOfCombo(book, comboId),
    referencesOfCombo(book, comboId),
    preferences(book),
    cornerReviewsOfCombo(book, comboId),
  ]);
  const digests = await freshDigests(book, comboId, chosen, today);
  const sessions = await withRuns(book, sessionsForCorners({ digests, pages, today }));
  return {
    digests,
    pages,
    targets,
    references,
    preferences: chosen,
    today,
    sessions,
    corners: names.layout.corners,
    car: names.car,
    lowestSpeeds: names.combo.lowestSpeeds ?? [],
    reviews: reviews.filter(({ on }) => on <= today),
  };
}

/** The sessions themselves; one that has gone meanwhile is left out. */
export async function withRuns(book: ReadOnlyLogbook, digests: readonly SessionDigest[]) {
  const found = await Promise.all(
    digests.map(async ({ sessionId }) => ({
      session: await sessionOf(book, sessionId),
      runs: await runsOfSession(book, sessionId),
    })),
  );
  return found.flatMap(({ session, runs }) => (session === undefined ? [] : [{ session, runs }]));
}
