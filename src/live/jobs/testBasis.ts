import { isOnPage, presentPage } from "#combo";
import { pagesOfCombo, preferences } from "#db";
import type { CalendarDate, Id } from "#domain";
import { type TestBasis, testBasis } from "#stats";
import { freshDigests } from "./freshDigests.ts";
import type { JobRun } from "./job.ts";

export interface TestBasisDetails {
  readonly comboId: Id;
  readonly today: CalendarDate;
}

/** What a rig test of a combo is planned from: the driver's own runs on the page in force. */
export const runTestBasis: JobRun<TestBasisDetails, TestBasis> = async (book, { comboId, today }) => {
  const [pages, chosen] = await Promise.all([pagesOfCombo(book, comboId), preferences(book)]);
  const driven = await freshDigests(book, comboId, chosen, today);
  const span = presentPage(pages, today);
  const page = driven.filter((digest) => isOnPage(span, digest.startedAt));
  return testBasis({ page, driven, today });
};
