import { type CalendarDate, sayDate } from "#domain";
import { leastWorthwhile, type RigStep, type SessionOfNeither, type StepAtChange } from "#stats";
import { hundredths } from "./amount.ts";
import { asSentence, listed } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { isClear, isSame, pace, sayBetween, sayClear } from "./shift.ts";

/** What is asked where a change is too large to be believed. */
export const seldomTheRigs = "so large a step is seldom the rig's: are two combos mixed up?";

/** Part of the interval, from either end, that zero may not lie in where no difference is to be seen. */
const OUTER = 0.25;

type Said = Pick<RigStep, "step"> & Partial<Pick<RigStep, "after">>;

/**
 * What happened to a combo's usual lap at a change of the rig, beside what practice does by itself. That no difference is to be
 * noticed is said where the interval leaves out every difference worth talking about, that none is to be seen where zero
 * lies in its middle half; else there may be one.
 * @example "Faster by 0.31 s, very likely at least 0.12 s"
 * @example "No difference you would notice: between 0.05 s faster and 0.07 s slower"
 * @example "No difference to be seen: between 0.10 s faster and 0.14 s slower"
 * @example "Cannot be told from practice: between 0.50 s faster and 0.08 s slower"
 */
export function sayRigStep({ step, after }: Said): string {
  if (!step.known) return sayTooFew(step.reason);
  if (isSame(step.value)) return "No difference";
  const said = isClear(step.value)
    ? asSentence(sayClear(step.value, hundredths, pace))
    : `${sayUnclear(step.value, after?.usual.ms ?? 0)}: ${sayBetween(step.value, hundredths, pace)}`;
  return step.value.isQuestioned ? `${said}; ${seldomTheRigs}` : said;
}

function sayUnclear({ low, high }: StepAtChange, usual: number): string {
  if (Math.max(-low, high) <= leastWorthwhile * usual) return "No difference you would notice";
  const zeroAt = -low / (high - low);
  return zeroAt >= OUTER && zeroAt <= 1 - OUTER ? "No difference to be seen" : "Cannot be told from practice";
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
