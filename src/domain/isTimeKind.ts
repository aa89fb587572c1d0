import type { TargetKind } from "./rows.ts";

/** Kinds of target that are lap times, and have a forecast: best lap, usual lap, mean of some laps in a row. */
export type TimeKind = Exclude<TargetKind, "scatter" | "cleanShare">;

/** Whether a target of a kind is a lap time. A scatter and a share of clean laps have progress, and no forecast. */
export function isTimeKind(kind: TargetKind): kind is TimeKind {
  return kind !== "scatter" && kind !== "cleanShare";
}
