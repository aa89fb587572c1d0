import type { Figure } from "#domain";
import type { StepAtChange } from "#stats";
import { hundredths } from "./amount.ts";
import { sayTooFew } from "./reason.ts";
import { isClear, isSame, pace, sayBetween, sayClear } from "./shift.ts";

/**
 * What happened to a combo's usual lap at a change of the rig, beside what practice alone would have done.
 * @example "faster by 0.31 s beside practice, very likely at least 0.12 s"
 * @example "cannot be told from practice: between 0.10 s faster and 0.14 s slower"
 */
export function sayRigStep(step: Figure<StepAtChange>): string {
  if (!step.known) return sayTooFew(step.reason);
  if (isSame(step.value)) return "no difference";
  const said = isClear(step.value)
    ? sayClear(step.value, hundredths, pace, " beside practice")
    : `cannot be told from practice: ${sayBetween(step.value, hundredths, pace)}`;
  return step.value.isQuestioned
    ? `${said}; so large a step is seldom the rig's: are two combos mixed up?`
    : said;
}
