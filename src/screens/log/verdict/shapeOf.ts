import type { VerdictShapeOf } from "#charts/verdict/VerdictShape.tsx";
import type { RunVerdict } from "#stats";

/** The shape beside a verdict's word: the open bracket where laps are only counted, none beside two places or a valid run. */
export function shapeOf(verdict: RunVerdict): VerdictShapeOf | undefined {
  switch (verdict.word) {
    case "counted":
      return "too few";
    case "race":
      return verdict.grid === undefined || verdict.finish === undefined ? "too few" : undefined;
    case "rig test":
      return undefined;
    default:
      return verdict.word;
  }
}
