import type { TargetKind } from "./rows.ts";

/** The figure that a target is about. */
export interface AskedFigure {
  readonly kind: TargetKind;
  /** Number of laps of a mean. */
  readonly laps?: number | undefined;
}
