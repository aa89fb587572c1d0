import { type CalendarDate, type Figure, known, unknown } from "#domain";
import { atMost, figureForTarget, type TargetFigure } from "../combo/figureForTarget.ts";
import { levelOfPage } from "../combo/pageLevel.ts";
import { isMostlyAssumption } from "../level/levelModel.ts";
import { equallyLikely } from "./equallyLikely.ts";
import type { ExpectedSession } from "./expectedSession.ts";
import { firstReached } from "./firstReached.ts";
import { daysUntil, forecastBasis, type PagePractice, type TimeTarget } from "./forecastBasis.ts";
import { chanceOf } from "./forecastTarget.ts";
import { futureFigures } from "./futureFigures.ts";
import { isDriven } from "./isDriven.ts";
import { milestones } from "./milestones.ts";
import type { PracticeRate } from "./practiceRate.ts";

/** What is asked about: the target, and the practice on its combo's present page. */
export interface OutlookInput extends PagePractice, TimeTarget {
  readonly value: number;
  readonly by?: CalendarDate | undefined;
}

/** A step on the way to a target. */
export interface TargetStep {
  readonly ms: number;
  /** The day by which 10 in 20 have come there; undefined where not within a year. */
  readonly by: CalendarDate | undefined;
}

/** Whether and when a target is likely to be reached. */
export interface TargetOutlook {
  /** Chance by the date, and the sessions counted on until then; undefined without a date within a year. */
  readonly byDate: { readonly chance: number; readonly sessions: number } | undefined;
  /** Chance within a year: where fewer than 1 in 20 futures come there, the target is worth a question. */
  readonly chanceWithinYear: number;
  /** The second, tenth and eighteenth of the likely days: those by which the chance is told as 2, 10 and 18 in 20. */
  readonly expected: { readonly [E in keyof ExpectedSession]: CalendarDate | undefined };
  /** Twenty equally likely days, the soonest first; undefined for those not within a year. */
  readonly likelyDays: readonly (CalendarDate | undefined)[];
  /** Steps on the way, the target last. */
  readonly milestones: readonly TargetStep[];
  readonly rate: PracticeRate;
  /** Sessions it rests on. */
  readonly sessions: number;
  /** What is said comes from the assumptions more than from the laps. */
  readonly isMostlyAssumption: boolean;
}

/** A step on the way is at least this long, and there are at most four: our own choice. */
const LEAST_STEP_MS = 50;
const MOST_STEPS = 4;
/** The base that every chance is told with. */
const TWENTY = 20;
/** Of twenty: very unlikely, as likely as not, very likely. */
const [FEW, HALF, MOST] = [2, 10, 18];

/**
 * Whether and when a target is likely to be reached with practice as often and as long as in the last six weeks: the
 * chance by its date, the likely day, and milestones. Our methods, §6.
 * @returns a reason with fewer than three sessions of five pace laps, without a session in six weeks, or for a time
 * that has been driven, or come to by the level, already
 */
export function targetOutlook(input: OutlookInput): Figure<TargetOutlook> {
  const basis = forecastBasis(input, input);
  if (!basis.known) return basis;
  const { ahead, rate, question, horizon, kind } = basis.value;
  const { history } = question;
  const { value: targetMs, today, by } = input;
  if (kind === "best" && isDriven(targetMs, history)) return unknown({ because: "already reached" });
  const now = figureNow(input);
  if (now !== undefined && atMost(now) <= targetMs)
    return unknown({ because: now.isLevel ? "level there already" : "already reached" });
  const days = by !== undefined && by >= today && by <= horizon ? daysUntil(basis.value, by) : undefined;
  // The sessions until the date come first in the year too.
  const year = days === undefined ? ahead : [...days, ...ahead.slice(days.length)];
  const figures = futureFigures({ ...question, future: year.map(() => ({ laps: rate.lapsASession })) }, kind);
  if (!figures.known) return figures;
  const within = chanceOf(figures.value, targetMs);
  const dayOf = (session: number | undefined) => (session === undefined ? undefined : year[session - 1]);
  const likely = (first: Float64Array) => equallyLikely(first, TWENTY).map(dayOf);
  const likelyDays = likely(firstReached(figures.value, targetMs));
  return known({
    byDate: days && {
      chance: chanceOf(figures.value.slice(0, days.length), targetMs).chance,
      sessions: days.length,
    },
    chanceWithinYear: within.chance,
    expected: {
      low: likelyDays[FEW - 1],
      mid: likelyDays[HALF - 1],
      high: likelyDays[MOST - 1],
    },
    likelyDays,
    milestones: stepsTo(targetMs, now?.value, figures.value).map((ms) => ({
      ms,
      by: likely(firstReached(figures.value, ms))[HALF - 1],
    })),
    rate,
    sessions: history.length,
    isMostlyAssumption: isMostlyAssumption(history.length),
  });
}

/** What stands against the target, as it is told and asked about where one is set. */
function figureNow({ kind, laps, page, driven }: OutlookInput): TargetFigure | undefined {
  return figureForTarget({ kind, laps }, page, () => levelOfPage(page, driven));
}

function stepsTo(
  value: number,
  nowMs: number | undefined,
  figures: readonly Float64Array[],
): readonly number[] {
  if (nowMs === undefined) return [];
  const count = Math.min(MOST_STEPS, Math.floor((nowMs - value) / LEAST_STEP_MS));
  const steps = milestones({ nowMs, targetMs: value, figures, steps: Math.max(1, count) });
  return steps.known ? steps.value : [];
}
