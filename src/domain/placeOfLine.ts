import { canonicalText } from "./canonicalText.ts";
import type { PlannedRun } from "./rows.ts";

/**
 * Where a line stands in a plan: known by its id, or, where a draft was stored under other ids, by what it says.
 * @returns its index, −1 where it is not there
 */
export function placeOfLine(lines: readonly PlannedRun[], line: PlannedRun): number {
  const at = lines.findIndex(({ id }) => id !== undefined && id === line.id);
  return at >= 0 ? at : lines.findIndex((one) => lineText(one) === lineText(line));
}

/** What a line says, whatever its id: the same text for the same line. */
export function lineText({ id: _, ...rest }: PlannedRun): string {
  return canonicalText(rest);
}
