import type { VerdictShapeOf } from "#charts/verdict/VerdictShape.tsx";
import type { RunVerdict } from "#stats";

/** The shape beside a verdict's word; none where nothing is compared. */
export function shapeOf({ word }: RunVerdict): VerdictShapeOf | undefined {
  return word === "counted" || word === "race" || word === "rig test" ? undefined : word;
}
