import { onPage, presentPage } from "#combo";
import { latestRuns, pagesOfCombo, preferences } from "#db";
import type { CalendarDate, Id } from "#domain";
import { levelSince, type RaceLength, type RaceOutlook, raceOutlook } from "#stats";
import type { JobRun } from "./job.ts";
import { presentDigests } from "./presentDigests.ts";

export interface RaceDetails {
  readonly comboId: Id;
  readonly today: CalendarDate;
  readonly race: RaceLength;
}

/** Enough to hold the last runs for time, with warm-ups and drills between them. */
const mostRuns = 60;

/** A race to come with a combo. */
export const runRace: JobRun<RaceDetails, RaceOutlook> = async (book, { comboId, today, race }) => {
  const [pages, choices, latest, { page, driven }] = await Promise.all([
    pagesOfCombo(book, comboId),
    preferences(book),
    latestRuns(book, comboId, mostRuns),
    presentDigests(book, { comboId, today }),
  ]);
  const runs = onPage(presentPage(pages, today), latest);
  return raceOutlook({ comboId, runs, choices, race, moved: levelSince(page, driven) });
};
