import type { ForecastKind, SuggestedTarget, SuggestedTargets } from "#stats";
import { CHANCES, sayChance } from "./chance.ts";
import { targetFigure } from "./targets.ts";

/** Its chance; of a usual lap in one session, which the target itself does not count as reached. */
function chanceOf({ chance }: SuggestedTarget, kind: ForecastKind, isFirst: boolean): string {
  if (!isFirst) return `(${Math.round(chance * CHANCES)} in ${CHANCES})`;
  return `(${sayChance(chance)}${kind === "median" ? " in one session" : ""})`;
}

/**
 * One line about targets worth setting, in parts: words, and the targets where their times stand in it.
 * @example ["A fair target by that date:", fair, "(10 chances in 20); a stretch:", stretch, "(4 in 20)."]
 */
export function suggestionParts(
  { fair, stretch }: Pick<SuggestedTargets, "fair" | "stretch">,
  kind: ForecastKind,
): readonly (string | SuggestedTarget)[] {
  if (fair !== undefined) {
    const first = ["A fair target by that date:", fair];
    return stretch === undefined || stretch.ms === fair.ms
      ? [...first, `${chanceOf(fair, kind, true)}.`]
      : [
          ...first,
          `${chanceOf(fair, kind, true)}; a stretch:`,
          stretch,
          `${chanceOf(stretch, kind, false)}.`,
        ];
  }
  const most = stretch === undefined ? 4 : 10;
  const bound = `At most ${most} chances in ${CHANCES} for a faster ${targetFigure({ kind })} by that date than you have driven.`;
  return stretch === undefined
    ? [bound]
    : [`${bound} A stretch:`, stretch, `${chanceOf(stretch, kind, true)}.`];
}
