import { type CalendarDate, type Figure, sayDate } from "#domain";
import type { SessionOfNeither, StepAtChange } from "#stats";
import { hundredths } from "./amount.ts";
import { asSentence, listed } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { isClear, isSame, pace, sayBetween, sayClear } from "./shift.ts";

/** What is asked where a change is too large to be believed. */
export const seldomTheRigs = "so large a step is seldom the rig's: are two combos mixed up?";

/**
 * What happened to a combo's usual lap at a change of the rig, practice taken out.
 * @example "Faster by 0.31 s, very likely at least 0.12 s"
 * @example "Cannot be told from practice: between 0.10 s faster and 0.14 s slower"
 */
export function sayRigStep(step: Figure<StepAtChange>): string {
  if (!step.known) return sayTooFew(step.reason);
  if (isSame(step.value)) return "No difference";
  const said = isClear(step.value)
    ? asSentence(sayClear(step.value, hundredths, pace))
    : `Cannot be told from practice: ${sayBetween(step.value, hundredths, pace)}`;
  return step.value.isQuestioned ? `${said}; ${seldomTheRigs}` : said;
}

/**
 * Which sessions stand on neither side of a change, and why.
 * @example "Sat 24 Oct 2026 was driven with both settings and counts on neither side."
 */
export function sayNeither(neither: readonly SessionOfNeither[]): readonly string[] {
  const datesOf = (why: SessionOfNeither["why"]) =>
    neither.filter((session) => session.why === why).map(({ date }) => date);
  return [
    sentence(datesOf("both"), "both settings"),
    sentence(datesOf("old again"), "the old settings again"),
  ].filter((one) => one !== undefined);
}

function sentence(dates: readonly CalendarDate[], settings: string): string | undefined {
  if (dates.length === 0) return undefined;
  const [were, count] = dates.length === 1 ? ["was", "counts"] : ["were", "count"];
  return `${listed(dates.map(sayDate))} ${were} driven with ${settings} and ${count} on neither side.`;
}
