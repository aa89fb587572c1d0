import { type CalendarDate, type Figure, known, unknown } from "#domain";
import { figureForTarget } from "../combo/figureForTarget.ts";
import { levelOfPage } from "../combo/pageLevel.ts";
import { isMostlyAssumption } from "../level/levelModel.ts";
import { fairTargetsOf } from "./fairTargets.ts";
import { daysUntil, forecastBasis, type PagePractice, type TimeTarget } from "./forecastBasis.ts";
import { chanceOf } from "./forecastTarget.ts";
import { futureFigures } from "./futureFigures.ts";
import { reachedBy } from "./reachedBy.ts";

/** A value worth setting, in whole hundredths, and the chance of it. */
export interface SuggestedTarget {
  readonly ms: number;
  readonly chance: number;
}

/** Each is undefined where such a value has been driven already. */
export interface SuggestedTargets {
  /** Reached in about half of the futures, and in about one of five. */
  readonly fair: SuggestedTarget | undefined;
  readonly stretch: SuggestedTarget | undefined;
  /** Sessions counted on until the date. */
  readonly sessions: number;
  /**
   * A harder target is a question, ms: what one in 20 futures reach within a year; where they are mostly assumption, what
   * is suggested here.
   */
  readonly hardest: number;
  readonly isMostlyAssumption: boolean;
}

/** What a suggestion is asked for. */
export interface SuggestionInput extends PagePractice, TimeTarget {
  /** Today or later. */
  readonly by: CalendarDate;
}

const HUNDREDTH = 10;
/** A target that fewer futures reach within a year is worth a question. */
const HARDEST = 0.05;

/**
 * Targets worth setting by a date, the values reached in 10 and in 4 of 20 futures (our methods, §6) in whole
 * hundredths of a second, each with the chance of the rounded value. For a driver who has gone flat they may lie above
 * what was driven; they are then left out.
 * @returns a reason with fewer than three sessions of five pace laps, without a session in six weeks, or for a date more
 * than a year away
 */
export function suggestedTargets(input: SuggestionInput): Figure<SuggestedTargets> {
  const basis = forecastBasis(input, input);
  if (!basis.known) return basis;
  const { laps, page, driven, by } = input;
  const { question: practice, rate, horizon, ahead } = basis.value;
  if (by > horizon) return unknown({ because: "more than a year away" });
  const days = daysUntil(basis.value, by);
  // The sessions until the date come first in the year too, so what is suggested is never harder than the hardest.
  const year = [...days, ...ahead.slice(days.length)];
  const now =
    figureForTarget({ kind: input.kind, laps }, page, () => levelOfPage(page, driven))?.value ??
    Number.POSITIVE_INFINITY;
  const figures = futureFigures(
    { ...practice, future: year.map(() => ({ laps: rate.lapsASession })) },
    basis.value.kind,
  );
  if (!figures.known) return figures;
  const untilThen = figures.value.slice(0, days.length);
  const suggest = (value: number): SuggestedTarget | undefined => {
    const ms = Math.round(value / HUNDREDTH) * HUNDREDTH;
    if (ms >= now) return undefined;
    return { ms, chance: chanceOf(untilThen, ms).chance };
  };
  const { fair, stretch } = fairTargetsOf(untilThen);
  const assumed = isMostlyAssumption(practice.history.length);
  const hardest = Math.floor(assumed ? stretch : reachedBy(figures.value, HARDEST));
  return known({
    fair: suggest(fair),
    stretch: suggest(stretch),
    sessions: days.length,
    hardest,
    isMostlyAssumption: assumed,
  });
}
