import type { ReadOnlyLogbook } from "#db";
import type { Figure } from "#domain";
import type { ComboLine, ComboReview, SuggestedTargets, TargetOutlook } from "#stats";
import { type AcrossCombosDetails, acrossCombosJob } from "./acrossCombos.ts";
import { type ComboReviewDetails, comboReviewJob } from "./comboReview.ts";
import { freshenJob } from "./freshen.ts";
import type { Job } from "./job.ts";
import { type SearchDetails, type SearchResult, searchJob } from "./search.ts";
import { type Statement, type StatementDetails, statementJob } from "./statement.ts";
import { type SuggestedTargetsDetails, suggestedTargetsJob } from "./suggestedTargets.ts";
import { type TargetOutlookDetails, targetOutlookJob } from "./targetOutlook.ts";

/** What each job is asked with and gives. */
interface Jobs {
  readonly acrossCombos: { readonly details: AcrossCombosDetails; readonly result: ComboLine[] };
  readonly comboReview: { readonly details: ComboReviewDetails; readonly result: ComboReview };
  readonly freshen: { readonly details: null; readonly result: number };
  readonly search: { readonly details: SearchDetails; readonly result: SearchResult };
  readonly statement: { readonly details: StatementDetails; readonly result: Statement };
  readonly suggestedTargets: {
    readonly details: SuggestedTargetsDetails;
    readonly result: Figure<SuggestedTargets>;
  };
  readonly targetOutlook: {
    readonly details: TargetOutlookDetails;
    readonly result: Figure<TargetOutlook>;
  };
}

export type JobName = keyof Jobs;
export type JobArguments<J extends JobName> = Jobs[J]["details"];
export type JobResult<J extends JobName> = Jobs[J]["result"];

const jobs: { readonly [J in JobName]: Job<JobArguments<J>, JobResult<J>> } = {
  acrossCombos: acrossCombosJob,
  comboReview: comboReviewJob,
  freshen: freshenJob,
  search: searchJob,
  statement: statementJob,
  suggestedTargets: suggestedTargetsJob,
  targetOutlook: targetOutlookJob,
};

/** Works out the figures of a job, here. */
export function runJob<J extends JobName>(
  book: ReadOnlyLogbook,
  job: J,
  details: JobArguments<J>,
): Promise<JobResult<J>> {
  return jobs[job].run(book, details);
}

/** A text that is another one whenever the figures of the job could be. */
export function markOf<J extends JobName>(
  book: ReadOnlyLogbook,
  job: J,
  details: JobArguments<J>,
): Promise<string> {
  return jobs[job].mark(book, details);
}
