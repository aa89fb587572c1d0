import { presentPage } from "#combo";
import { addDays, type Forecast, type Page, type Target, type TimeKind } from "#domain";
import { comboStanding, forecastOutcome, forecastsToMake } from "#stats";
import type { ComboKey } from "./combos.ts";
import type { DrivenEvening } from "./driveEvening.ts";
import { digestsUpTo, pageDigests } from "./pageDigests.ts";
import { instantAt, lastDay } from "./season.ts";
import type { Stamp } from "./stamps.ts";

/** A target with a date, and the combo it belongs to. */
export interface DatedTarget {
  readonly combo: ComboKey;
  readonly target: Target & { readonly kind: TimeKind; readonly by: string };
}

/** The twelve weeks as they were driven, and the new pages in them. */
interface Story {
  readonly season: readonly DrivenEvening[];
  readonly pages: readonly Page[];
}

/**
 * What the app said of a target after each session from the day after it was set, until it was reached or put away, scored
 * where its date has passed: by the app's own functions, on what was driven up to that evening.
 */
export function makeForecasts(
  stamp: Stamp,
  { combo, target }: DatedTarget,
  { season, pages: all }: Story,
): Forecast[] {
  const { comboId, by } = target;
  const pages = all.filter((page) => page.comboId === comboId);
  const isOver = by < lastDay;
  return season.flatMap(({ evening, session }): Forecast[] => {
    const { date: today } = evening;
    const saidAt = session.updatedAt + 90_000;
    if (evening.combo !== combo || today <= target.setOn || (target.archivedAt ?? saidAt) < saidAt) return [];
    const driven = digestsUpTo(season, combo, today);
    const { archivedAt: _, ...open } = target;
    const asOf = { comboId, today, pages, targets: [open], digests: driven };
    const made = forecastsToMake({
      ...{ comboId, today, driven, page: pageDigests(season, combo, today), forecasts: [] },
      ...{ states: comboStanding(asOf).targets, span: presentPage(pages, today) },
    });
    return made.map((said) => {
      const dueOn = addDays(by, 1);
      const row = { ...(isOver ? stamp(saidAt, instantAt(dueOn, "19:00")) : stamp(saidAt)), ...said };
      const digests = digestsUpTo(season, combo, lastDay);
      const outcome = forecastOutcome({ forecast: row, target, digests, pages, today: lastDay });
      return outcome.known ? { ...row, reached: outcome.value, scoredOn: dueOn } : row;
    });
  });
}
