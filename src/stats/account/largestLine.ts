import type { TimeAccount } from "./timeAccount.ts";

/** What the next session may work on. Others on track are not the driver's to mend. */
export type LineToWorkOn = "repeatability" | "mistakes" | "pace";

/**
 * The largest of repeatability, mistakes and pace; at a tie the one named first.
 * @returns undefined where none of the three is a loss
 * @example largestLine({ pace: 40, repeatability: 300, mistakes: 120, … }) // "repeatability"
 */
export function largestLine(
  account: Pick<TimeAccount, "pace" | "repeatability" | "mistakes">,
): LineToWorkOn | undefined {
  const lines: readonly LineToWorkOn[] = ["repeatability", "mistakes", "pace"];
  const largest = lines.reduce((best, line) => (account[line] > account[best] ? line : best));
  return account[largest] > 0 ? largest : undefined;
}
