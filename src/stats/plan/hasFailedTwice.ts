import type { TriedLine } from "./planFacts.ts";
import type { DraftLine } from "./planRules.ts";

const TWICE = 2;

/**
 * Whether the last two lines of the same form that were driven did not work: the same rule, corner, drill and number of laps.
 * @param tried the newest first
 */
export function hasFailedTwice(line: DraftLine, tried: readonly TriedLine[]): boolean {
  const same = tried.filter(
    ({ rule, corner, drill, laps }) =>
      rule === line.rule && corner === line.corner && drill === line.drill && laps === line.laps,
  );
  return same.length >= TWICE && same.slice(0, TWICE).every(({ isGood }) => !isGood);
}
