import type { ReadOnlyLogbook } from "#db";
import { markOfAcrossCombos } from "./acrossCombos.ts";
import { markOfComboReview } from "./comboReview.ts";
import { markOfFreshen } from "./freshen.ts";
import type { JobMark } from "./job.ts";
import type { JobArguments, JobName } from "./jobs.ts";
import { markOfRigSteps } from "./rigSteps.ts";
import { markOfSearch } from "./search.ts";
import { markOfStatement } from "./statement.ts";
import { markOfSuggestedTargets } from "./suggestedTargets.ts";
import { markOfTargetOutlook } from "./targetOutlook.ts";

const marks: { readonly [J in JobName]: JobMark<JobArguments<J>> } = {
  acrossCombos: markOfAcrossCombos,
  comboReview: markOfComboReview,
  freshen: markOfFreshen,
  rigSteps: markOfRigSteps,
  search: markOfSearch,
  statement: markOfStatement,
  suggestedTargets: markOfSuggestedTargets,
  targetOutlook: markOfTargetOutlook,
};

/** A text that is another one whenever the figures of the job could be. */
export function markOf<J extends JobName>(
  book: ReadOnlyLogbook,
  job: J,
  details: JobArguments<J>,
): Promise<string> {
  return marks[job](book, details);
}
