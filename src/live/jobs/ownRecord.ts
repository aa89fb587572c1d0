import { forecasts, preferences } from "#db";
import { type CalendarDate, grouped } from "#domain";
import { type OwnRecord, ownRecord } from "#stats";
import { freshDigests } from "./freshDigests.ts";
import type { JobRun } from "./job.ts";
import { outcomesOf } from "./outcomesOf.ts";

export interface OwnRecordDetails {
  readonly today: CalendarDate;
}

/** The app's own record, of all combos. */
export const runOwnRecord: JobRun<OwnRecordDetails, OwnRecord> = async (book, { today }) => {
  const [kept, chosen] = await Promise.all([forecasts(book), preferences(book)]);
  const judged = await Promise.all(
    [...grouped(kept, ({ comboId }) => comboId)].map(async ([comboId, said]) => {
      const driven = await freshDigests(book, comboId, chosen, today);
      return outcomesOf(book, { comboId, said, driven, today });
    }),
  );
  return ownRecord(judged.flat());
};
