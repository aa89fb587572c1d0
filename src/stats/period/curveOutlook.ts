import { addDays, type CalendarDate, type Figure, type Id, known } from "#domain";
import { type LevelOutlook, levelOutlook } from "../level/levelOutlook.ts";
import { seedOf } from "../random/seedOf.ts";
import type { PracticeRate } from "../targets/practiceRate.ts";
import type { Band } from "../weeks/bands.ts";
import { type PageSession, pageEvents } from "./pageHistory.ts";

/** A band of the level on its day. */
export interface DatedBand extends Band {
  readonly date: CalendarDate;
}

/** The level of a combo's page on the calendar. */
export interface CurveOutlook extends Omit<LevelOutlook, "bands" | "changes" | "curve"> {
  /** The level at each session of the page, with the session it belongs to. */
  readonly line: readonly (DatedBand & { readonly sessionId: Id })[];
  /** Usual laps of the sessions to come, at the present rate; none where nothing was driven lately. */
  readonly ahead: readonly DatedBand[];
  readonly rate: PracticeRate | undefined;
}

const WEEKS_AHEAD = 6;
const MOST_AHEAD = 30;

/** What the curve is worked out from. */
export interface OutlookQuestion {
  readonly comboId: Id;
  /** Sessions of the page with a median, oldest first. */
  readonly history: readonly PageSession[];
  readonly rate: PracticeRate | undefined;
  readonly today: CalendarDate;
}

/**
 * The level on the calendar: what it was at the sessions driven, and the bands of the sessions that the next six
 * weeks bring at the rate of the last six. Breaks of ten days or more are known to it. The seed comes from the combo,
 * so the same laps always draw the same picture.
 * @returns a reason with fewer than two sessions
 */
export function curveOutlook({ comboId, history, rate, today }: OutlookQuestion): Figure<CurveOutlook> {
  const dates = rate === undefined ? [] : datesAhead(rate, today);
  const laps = rate?.lapsASession ?? 0;
  const outlook = levelOutlook({
    sessions: history,
    since: [],
    future: dates.map(() => ({ laps })),
    seed: seedOf(comboId),
    events: pageEvents(history, today),
  });
  if (!outlook.known) return outlook;
  const { curve, bands, changes: _, ...answers } = outlook.value;
  return known({
    ...answers,
    line: history.slice(answers.sessionsLeftOut).flatMap(({ date, sessionId }, index) => {
      const band = curve[index];
      return band === undefined ? [] : [{ ...band, date, sessionId }];
    }),
    ahead: dates.flatMap((date, index) => {
      const band = bands[index];
      return band === undefined ? [] : [{ ...band, date }];
    }),
    rate,
  });
}

/** Days of the sessions to come, evenly spaced from today on; at least two, or there is no band to draw. */
function datesAhead({ sessionsAWeek }: PracticeRate, today: CalendarDate): CalendarDate[] {
  const count = Math.min(MOST_AHEAD, Math.max(2, Math.round(sessionsAWeek * WEEKS_AHEAD)));
  return Array.from({ length: count }, (_, index) =>
    addDays(today, Math.max(1, Math.round(((index + 1) * 7 * WEEKS_AHEAD) / count))),
  );
}
