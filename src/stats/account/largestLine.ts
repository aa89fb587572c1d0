import type { TimeAccount } from "./timeAccount.ts";

/** What the next session may work on. Others on track are not the driver's to mend. */
export type LineToWorkOn = "repeatability" | "mistakes" | "pace";

/**
 * The largest of repeatability, mistakes and pace, and its loss in ms a lap; at a tie the one named first. Where laps
 * confirmed as odd make most of a line, it is that of the other laps.
 * @returns undefined where none of the three is a loss, or too few laps are left
 * @example largestLine({ pace: 40, repeatability: 300, mistakes: 120, … }) // { line: "repeatability", ms: 300 }
 */
export function largestLine(
  account: Pick<TimeAccount, LineToWorkOn | "odd">,
): { readonly line: LineToWorkOn; readonly ms: number } | undefined {
  const of = account.odd === undefined ? account : account.odd.without;
  if (of === undefined) return undefined;
  const lines: readonly LineToWorkOn[] = ["repeatability", "mistakes", "pace"];
  const line = lines.reduce((best, one) => (of[one] > of[best] ? one : best));
  return of[line] > 0 ? { line, ms: of[line] } : undefined;
}
