import { presentPage } from "#combo";
import { forecasts, pagesOfCombo, targetsOfCombo } from "#db";
import type { CalendarDate, Id } from "#domain";
import { comboStanding, forecastsToMake, type NewForecast } from "#stats";
import type { JobRun } from "./job.ts";
import { outcomesOf } from "./outcomesOf.ts";
import { presentDigests } from "./presentDigests.ts";

export interface ForecastsDueDetails {
  readonly comboId: Id;
  readonly today: CalendarDate;
}

/** What is to be written of a combo's forecasts: those made now, and what came of those whose date has passed. */
export interface ForecastsDue {
  readonly make: readonly NewForecast[];
  /** Only those whose score is not kept yet, or another one by now. */
  readonly score: readonly { readonly id: Id; readonly reached: boolean }[];
}

/** The forecasts of a combo that are to be kept now, and to be scored. */
export const runForecastsDue: JobRun<ForecastsDueDetails, ForecastsDue> = async (book, details) => {
  const { comboId, today } = details;
  const [pages, targets, kept, { page, driven, practice }] = await Promise.all([
    pagesOfCombo(book, comboId),
    targetsOfCombo(book, comboId),
    forecasts(book),
    presentDigests(book, details),
  ]);
  const said = kept.filter((forecast) => forecast.comboId === comboId);
  const states = comboStanding({ comboId, digests: driven, pages, targets, today }).targets;
  const judged = await outcomesOf(book, { comboId, said, driven, today });
  const score = judged.flatMap(({ forecast: { id, reached }, outcome }) =>
    outcome.known && outcome.value !== reached ? [{ id, reached: outcome.value }] : [],
  );
  const span = presentPage(pages, today);
  return {
    make: forecastsToMake({ comboId, page, driven, practice, today, span, states, forecasts: said }),
    score,
  };
};
