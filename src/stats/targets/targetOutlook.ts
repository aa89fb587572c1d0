import { type CalendarDate, type Figure, known, unknown } from "#domain";
import { mean } from "#numbers";
import { figureForTarget } from "../combo/figureForTarget.ts";
import type { PastSession } from "../weeks/history.ts";
import type { ExpectedSession } from "./expectedSession.ts";
import { daysUntil, forecastBasis, type PagePractice } from "./forecastBasis.ts";
import { forecastTarget, type TargetForecast } from "./forecastTarget.ts";
import type { ForecastKind } from "./futureFigures.ts";
import { milestones } from "./milestones.ts";
import type { PracticeRate } from "./practiceRate.ts";

/** What is asked about: the target, and the practice on its combo's present page. */
export interface OutlookInput extends PagePractice {
  readonly kind: ForecastKind;
  readonly value: number;
  readonly by?: CalendarDate | undefined;
}

/** Whether and when a target is likely to be reached. */
export interface TargetOutlook {
  /** Chance by the date, and the sessions counted on until then; undefined without a date within a year. */
  readonly byDate: { readonly chance: number; readonly sessions: number } | undefined;
  /** Days by which 2, 10 and 18 of 20 futures have reached it; undefined where not within a year. */
  readonly expected: { readonly [E in keyof ExpectedSession]: CalendarDate | undefined };
  /** Steps on the way, ms, the target last. */
  readonly milestones: readonly number[];
  readonly rate: PracticeRate;
  /** Sessions it rests on. */
  readonly sessions: number;
  /** What is said comes from the assumptions more than from the laps. */
  readonly isMostlyAssumption: boolean;
}

/** A step on the way is at least this long, and there are at most four: our own choice. */
const LEAST_STEP_MS = 50;
const MOST_STEPS = 4;

/**
 * Whether and when a target is likely to be reached with practice as often and as long as in the last six weeks: the
 * chance by its date, the likely day, and milestones. Our methods, §6.
 * @returns a reason with fewer than three sessions of five pace laps, without a session in six weeks, or where a past
 * session has come there already
 */
export function targetOutlook(input: OutlookInput): Figure<TargetOutlook> {
  const basis = forecastBasis(input);
  if (!basis.known) return basis;
  const { ahead, rate, question, horizon } = basis.value;
  const { value: targetMs, kind, today, by } = input;
  const days = by !== undefined && by >= today && by <= horizon ? daysUntil(basis.value, by) : undefined;
  const year = days === undefined ? ahead : [...days, ...ahead.slice(days.length)];
  const ask = ({ length }: typeof ahead) => {
    const future = Array.from({ length }, () => ({ laps: rate.lapsASession }));
    return forecastTarget({ ...question, future, targetMs, kind });
  };
  const byDate = days && ask(days);
  // The sessions until the date come first in the year too, so what most futures reach by then needs no look further.
  const forecast = byDate?.known && byDate.value.expectedSession.high !== undefined ? byDate : ask(year);
  if (!forecast.known) return unknown("a session of this page has come there already, so no chance is given");
  const { expectedSession, floor, isMostlyAssumption } = forecast.value;
  const dayOf = (session: number | undefined) => (session === undefined ? undefined : year[session - 1]);
  return known({
    byDate: days && byDate?.known ? { chance: byDate.value.chance, sessions: days.length } : undefined,
    expected: {
      low: dayOf(expectedSession.low),
      mid: dayOf(expectedSession.mid),
      high: dayOf(expectedSession.high),
    },
    milestones: stepsTo(input, floor, question.history),
    rate,
    sessions: question.history.length,
    isMostlyAssumption,
  });
}

function stepsTo(
  { kind, value, page }: OutlookInput,
  floor: TargetForecast["floor"],
  history: readonly PastSession[],
): readonly number[] {
  const nowMs = figureForTarget({ kind }, page, undefined)?.value;
  if (nowMs === undefined) return [];
  const meanGapMs = kind === "best" ? (mean(history.map((past) => past.bestMs - past.medianMs)) ?? 0) : 0;
  const count = Math.min(MOST_STEPS, Math.floor((nowMs - value) / LEAST_STEP_MS));
  const steps = milestones({ nowMs, targetMs: value, floor, meanGapMs, steps: Math.max(1, count) });
  return steps.known ? steps.value : [];
}
