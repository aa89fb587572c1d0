import type { Figure } from "#domain";
import { type SessionTrend, sessionTrend } from "../period/sessionTrend.ts";
import type { ComboLine } from "./acrossCombos.ts";

/** The figures that compare where lap times do not. */
export const acrossFigures = [
  "scatter",
  "usualToBest",
  "cleanShare",
  "mistakes",
  "lapsUntilOnThePace",
  "toReference",
] as const;
export type AcrossFigure = (typeof acrossFigures)[number];

/** A figure of one combo: percent, mistakes a hundred laps, or laps; undefined with too few laps. */
export function acrossValue(line: ComboLine, figure: AcrossFigure): number | undefined {
  switch (figure) {
    case "scatter":
      return line.scatterPercent;
    case "usualToBest":
      return line.usualToBestPercent;
    case "cleanShare":
      return line.cleanShare && 100 * line.cleanShare.share;
    case "mistakes":
      return line.mistakesPer100;
    case "lapsUntilOnThePace":
      return line.lapsUntilOnThePace;
    case "toReference":
      return line.toReferencePercent;
  }
}

/** A figure that moves by a quarter of itself is worth knowing about. */
const WORTH_SHOWING = 0.25;

/**
 * Whether a figure rises or falls from combo to combo, in the order in which they were first driven: Mann–Kendall and
 * Theil–Sen, as over sessions.
 * @returns a reason for fewer than five combos with the figure
 */
export function acrossTrend(lines: readonly ComboLine[], figure: AcrossFigure): Figure<SessionTrend> {
  let laps = 0;
  const points = inOrderDriven(lines).flatMap((line) => {
    const value = acrossValue(line, figure);
    laps += line.laps;
    return value === undefined ? [] : [{ startedAt: line.firstAt, laps: laps - line.laps / 2, value }];
  });
  return sessionTrend(points, { of: "combo with this figure" }, WORTH_SHOWING);
}

/** The combos in the order in which they were first driven. */
export function inOrderDriven(lines: readonly ComboLine[]): ComboLine[] {
  return lines.toSorted((a, b) => a.firstAt - b.firstAt);
}
