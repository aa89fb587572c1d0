import type { AskedFigure, TargetKind } from "#domain";
import type { TargetFigure } from "#stats";
import { asSentence } from "./counted.ts";
import { bestFigure, sayTargetFigure, targetFigure } from "./targets.ts";

/** What the field for a target's value is called. */
export function valueLabel(kind: TargetKind): string {
  if (kind === "scatter") return "Scatter to reach";
  return kind === "cleanShare" ? "Share to reach" : "Time to reach";
}

/**
 * The figure that stands against a target now, and how to type another.
 * @param now undefined where there is none yet
 * @param example of a lap time, "1:23.000"
 * @example "Best so far 1:23.704. Type it like 1:23.500, or its last digits"
 * @example "Scatter of your last session ± 0.31 s. Type seconds, like 0.25"
 */
export function sayHowToType(asked: AskedFigure, now: TargetFigure | undefined, example: string): string {
  const { kind } = asked;
  if (kind === "scatter" || kind === "cleanShare") {
    const how = kind === "scatter" ? "Type seconds, like 0.25" : "Type percent, like 85";
    return now === undefined
      ? how
      : `${asSentence(targetFigure(asked))} of your last session ${sayTargetFigure(kind, now)}. ${how}`;
  }
  if (now === undefined) return "Type it as 1:23.456";
  if (now.isLevel)
    return `${asSentence(sayTargetFigure(kind, now))} now. Type it like ${example}, or its last digits`;
  const figure =
    kind === "best" ? "Best" : asSentence(kind === "median" ? targetFigure(asked) : bestFigure(asked));
  return `${figure} so far ${sayTargetFigure(kind, now)}. Type it like ${example}, or its last digits`;
}

/** Why no chance is told of a target that is no lap time. */
export const progressOnly =
  "A scatter and a share of clean laps are followed, not forecast: you see how far they have come.";
