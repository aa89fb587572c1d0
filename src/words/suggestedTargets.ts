import type { ForecastKind, SuggestedTarget, SuggestedTargets } from "#stats";
import { targetFigure } from "./targets.ts";

const FUTURES = 20;

/** How many futures reach it; a usual lap in one session, which the target itself does not count as reached. */
function futuresOf({ chance }: SuggestedTarget, kind: ForecastKind, isFirst: boolean): string {
  const futures = `${Math.round(chance * FUTURES)} of ${FUTURES}`;
  if (!isFirst) return `(${futures})`;
  return `(${kind === "median" ? "reached in one session" : "reached"} in ${futures} futures)`;
}

/**
 * One line about targets worth setting, in parts: words, and the targets where their times stand in it.
 * @example ["A fair target by that date:", fair, "(reached in 10 of 20 futures); a stretch:", stretch, "(4 of 20)."]
 */
export function suggestionParts(
  { fair, stretch }: Pick<SuggestedTargets, "fair" | "stretch">,
  kind: ForecastKind,
): readonly (string | SuggestedTarget)[] {
  if (fair !== undefined) {
    const first = ["A fair target by that date:", fair];
    return stretch === undefined || stretch.ms === fair.ms
      ? [...first, `${futuresOf(fair, kind, true)}.`]
      : [
          ...first,
          `${futuresOf(fair, kind, true)}; a stretch:`,
          stretch,
          `${futuresOf(stretch, kind, false)}.`,
        ];
  }
  const most = stretch === undefined ? 4 : 10;
  const bound = `At most ${most} of ${FUTURES} futures bring a faster ${targetFigure({ kind })} by that date than you have driven.`;
  return stretch === undefined
    ? [bound]
    : [`${bound} A stretch:`, stretch, `${futuresOf(stretch, kind, true)}.`];
}
