import type { ComboReview, PeriodShift } from "#stats";
import type { Unit } from "./amount.ts";
import { hundredths, percentsOfALap } from "./amount.ts";
import { sayChance } from "./chance.ts";
import { asSentence, counted } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { type Directions, isClear, isSame, pace, sayBetween, sayClear, sayNotClear } from "./shift.ts";

const steady: Directions = { fall: "steadier", rise: "less steady" };

/**
 * How the usual lap moved against the period before.
 * @param before the period before in words: "the 4 weeks before"
 * @example "Usual lap faster by 0.47 s than in the 4 weeks before, very likely at least 0.23 s"
 * @example "Usual lap not clearly faster or slower than in the 4 weeks before"
 */
export function shiftTitle({ shift }: Pick<ComboReview, "shift">, before: string): string {
  if (!shift.known) return sayTooFew(shift.reason);
  if (isSame(shift.value)) return `Usual lap the same as in ${before}`;
  if (isClear(shift.value))
    return `Usual lap ${sayClear(shift.value, hundredths, pace, ` than in ${before}`)}`;
  return `Usual lap ${sayNotClear(pace, ` than in ${before}`)}`;
}

/** What stands behind it: the interval, sessions on both sides, and why sessions and not laps. */
export function shiftReading({ shift, distribution }: Pick<ComboReview, "shift" | "distribution">): string {
  const [now, before] = [distribution.now?.laps ?? 0, distribution.before?.laps ?? 0];
  if (!shift.known)
    return before === 0
      ? `${counted(now, "pace lap")} now, none in the period before to compare with.`
      : `${counted(now, "pace lap")} now and ${before} before are drawn; there are too few sessions for a verdict.`;
  const { sessions, sessionsBefore } = shift.value;
  return `${chance(shift.value)}${counted(now, "pace lap")} now, ${before} before; ${sessions} against ${counted(sessionsBefore, "session")}. Counted by session, because laps of one session are alike. Whole periods are compared here; the gain at the top goes from the first session of this one to its last.`;
}

/**
 * How often a lap now is faster than one of the period before; empty where they may not be compared.
 * @param before the period before in words: "the 4 weeks before"
 * @example "A pace lap now beats one of the 4 weeks before: 14 chances in 20."
 */
export function nowBeatsSays({ nowBeats }: Pick<ComboReview, "nowBeats">, before: string): string {
  return nowBeats.known ? `A pace lap now beats one of ${before}: ${sayChance(nowBeats.value)}.` : "";
}

/**
 * How the scatter moved against the period before.
 * @example "Not clearly steadier or less steady than in the 4 weeks before: between 0.12 % of a lap steadier and 0.34 % of a
 * lap less steady."
 */
export function scatterShiftSays(
  { scatterShift }: Pick<ComboReview, "scatterShift">,
  before: string,
): string {
  if (!scatterShift.known) return "";
  return sayPeriodShift(scatterShift.value, percentsOfALap, steady, before);
}

function sayPeriodShift(shift: PeriodShift, unit: Unit, words: Directions, before: string): string {
  if (isSame(shift)) return `The same as in ${before}.`;
  return isClear(shift)
    ? `${asSentence(sayClear(shift, unit, words, ` than in ${before}`))}.`
    : `${asSentence(sayNotClear(words, ` than in ${before}`))}: ${sayBetween(shift, unit, words)}.`;
}

const chance = (shift: PeriodShift) =>
  isClear(shift) || isSame(shift) ? "" : `It may be chance: ${sayBetween(shift, hundredths, pace)}. `;
