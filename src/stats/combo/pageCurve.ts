import type { CalendarDate, Figure } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { type CurveOutlook, curveOutlook } from "../period/curveOutlook.ts";
import { pageHistory } from "../period/pageHistory.ts";
import { practiceRate } from "../targets/practiceRate.ts";

/** What a page's curve is drawn from. */
export interface PageCurveQuestion {
  readonly comboId: string;
  /** Digests of the combo's present page, in any order. */
  readonly page: readonly SessionDigest[];
  readonly today: CalendarDate;
}

/**
 * The level of a combo's page on the calendar, and the sessions that the next weeks bring: what is drawn, and what is said
 * of it. Dear to compute; kept as long as nothing of the combo changes.
 * @returns a reason with fewer than two sessions of five pace laps
 */
export function pageCurve({ comboId, page, today }: PageCurveQuestion): Figure<CurveOutlook> {
  return curveOutlook({ comboId, history: pageHistory(page), rate: practiceRate(page, today), today });
}
