import type { TimeKind } from "#domain";
import type { SuggestedTarget, SuggestedTargets } from "#stats";
import { sayChance } from "./chance.ts";
import { targetFigure } from "./targets.ts";

/** Its chance; that of a usual lap is of one session, which the target itself does not count as reached. */
function chanceOf({ chance }: SuggestedTarget, kind: TimeKind, isFirst: boolean): string {
  const told = sayChance(chance);
  return `(${isFirst && kind === "median" ? `${told} that one session reaches it` : told})`;
}

/**
 * One line about targets worth setting, in parts: words, and the targets where their times stand in it.
 * @example ["A fair target by that date:", fair, "(10 chances in 20); a stretch:", stretch, "(4 chances in 20)."]
 */
export function suggestionParts(
  { fair, stretch }: Pick<SuggestedTargets, "fair" | "stretch">,
  target: { readonly kind: TimeKind; readonly laps?: number | undefined },
): readonly (string | SuggestedTarget)[] {
  const { kind, laps } = target;
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
  const most = sayChance(stretch === undefined ? 0.2 : 0.5);
  const bound = `A ${targetFigure({ kind, laps })} faster than any you have driven has at most ${most} by that date.`;
  return stretch === undefined
    ? [bound]
    : [`${bound} A stretch:`, stretch, `${chanceOf(stretch, kind, true)}.`];
}
