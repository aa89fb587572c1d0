import { onPage, presentPage } from "#combo";
import type { CalendarDate, Id } from "#domain";
import { comboStanding, cornersReport, type WhereToFind, whereToFind } from "#stats";
import { cornersInput } from "./corners.ts";
import type { JobRun } from "./job.ts";

export interface WhereToFindDetails {
  readonly comboId: Id;
  readonly today: CalendarDate;
}

/** Where the time that the open targets of a combo still need could come from. */
export const runWhereToFind: JobRun<WhereToFindDetails, WhereToFind[]> = async (book, details) => {
  const input = await cornersInput(book, details);
  if (input === null) return [];
  const { comboId, today } = details;
  const { digests, pages } = input;
  const page = onPage(presentPage(pages, today), digests).toSorted((a, b) => a.startedAt - b.startedAt);
  const states = comboStanding({ ...input, comboId }).targets;
  return whereToFind({ states, page, report: cornersReport(input) });
};
