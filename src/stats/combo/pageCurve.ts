import type { Figure } from "#domain";
import { type CurveOutlook, curveOutlook } from "../period/curveOutlook.ts";
import { pageHistory } from "../period/pageHistory.ts";
import type { PagePractice } from "../targets/forecastBasis.ts";
import { practiceRate } from "../targets/practiceRate.ts";

/**
 * The level of a combo's page on the calendar, and the sessions that the next weeks bring: what is drawn, and what is said
 * of it. Dear to compute; kept as long as nothing of the combo changes.
 * @returns a reason with fewer than two sessions of five pace laps
 */
export function pageCurve({ comboId, page, driven, today }: PagePractice): Figure<CurveOutlook> {
  return curveOutlook({
    comboId,
    history: pageHistory(page, driven),
    rate: practiceRate(page, today),
    today,
  });
}
