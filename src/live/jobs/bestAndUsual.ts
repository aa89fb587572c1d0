import type { CalendarDate, Id } from "#domain";
import { datedBests, latestUsual, type UsualLap } from "#stats";
import type { JobRun } from "./job.ts";
import { presentDigests } from "./presentDigests.ts";

export interface BestAndUsualDetails {
  readonly comboIds: readonly Id[];
  readonly today: CalendarDate;
}

/** What is known of a combo at a glance: PB and usual lap of its present page, each absent where there is none yet. */
export interface BestAndUsual {
  readonly comboId: Id;
  readonly best: { readonly ms: number; readonly decimals: number } | undefined;
  readonly usual: UsualLap | undefined;
}

/** PB and last usual lap of some combos, in their order. */
export const runBestAndUsual: JobRun<BestAndUsualDetails, BestAndUsual[]> = (book, { comboIds, today }) =>
  Promise.all(
    comboIds.map(async (comboId) => {
      const { page } = await presentDigests(book, { comboId, today });
      const best = datedBests(page).at(-1);
      return {
        comboId,
        best: best && { ms: best.ms, decimals: best.decimals },
        usual: latestUsual(page),
      };
    }),
  );
