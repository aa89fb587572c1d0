import {
  markOfAllCombos,
  markOfCombo,
  markOfCorners,
  markOfEverything,
  markOfPractice,
  type ReadOnlyLogbook,
} from "#db";
import type { Id } from "#domain";
import type { JobMark } from "./job.ts";
import type { JobArguments, JobName } from "./jobs.ts";

const ofCombo: JobMark<{ readonly comboId: Id }> = (book, { comboId }) => markOfCombo(book, comboId);

const ofPractice: JobMark<{ readonly comboId: Id }> = (book, { comboId }) => markOfPractice(book, comboId);

const marks: { readonly [J in JobName]: JobMark<JobArguments<J>> } = {
  acrossCombos: markOfAllCombos,
  bestAndUsual: markOfAllCombos,
  comboReview: ofCombo,
  corners: (book, { comboId }) => markOfCorners(book, comboId),
  drills: ofCombo,
  forecastsDue: markOfEverything,
  freshen: () => Promise.resolve(""),
  ownRecord: markOfEverything,
  plan: markOfEverything,
  practiceLately: ofCombo,
  race: ofCombo,
  rigAnswers: markOfEverything,
  rigSteps: markOfAllCombos,
  rigTestPages: markOfEverything,
  rigTests: markOfEverything,
  runBasis: ofCombo,
  search: markOfEverything,
  sideBySide: markOfEverything,
  statement: markOfAllCombos,
  suggestedTargets: ofPractice,
  targetNow: ofCombo,
  targetOutlook: ofPractice,
  targetWays: ofCombo,
  testBasis: ofCombo,
  whereToFind: (book, { comboId }) => markOfCorners(book, comboId),
};

/**
 * A text that is another one whenever the figures of the job could be. Apart from what computes, which the page should not
 * have to fetch.
 */
export function markOf<J extends JobName>(
  book: ReadOnlyLogbook,
  job: J,
  details: JobArguments<J>,
): Promise<string> {
  return marks[job](book, details);
}
