import type { CalendarDate, Figure, Id } from "#domain";
import { type OutlookInput, type TargetOutlook, targetOutlook } from "#stats";
import type { JobRun } from "./job.ts";
import { presentDigests } from "./presentDigests.ts";

export interface TargetOutlookDetails {
  readonly comboId: Id;
  readonly kind: OutlookInput["kind"];
  /** Number of laps of a mean. */
  readonly laps?: number | undefined;
  readonly value: number;
  readonly by: CalendarDate | undefined;
  readonly today: CalendarDate;
}

/** Whether and when one target is likely to be reached. */
export const runTargetOutlook: JobRun<TargetOutlookDetails, Figure<TargetOutlook>> = async (book, details) =>
  targetOutlook({ ...details, ...(await presentDigests(book, details)) });
