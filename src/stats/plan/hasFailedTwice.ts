import type { TriedLine } from "./planFacts.ts";
import { type DraftLine, type PlanRule, SHORT_RUN } from "./planRules.ts";

const TWICE = 2;
/** What is no advice that could have failed: the hands get warm, and what is measured is measured, whatever comes out. */
const alwaysThere: readonly PlanRule[] = ["after a break", "warm-up", "rig test", "measure"];

/**
 * Whether the last two lines of the same form that were driven did not work: the same rule, corner and drill, both of them long
 * runs or short ones, since an evening's room shortens a run without making another of it.
 * @param tried the newest first
 */
export function hasFailedTwice(line: DraftLine, tried: readonly TriedLine[]): boolean {
  if (alwaysThere.includes(line.rule)) return false;
  const same = tried.filter(
    ({ rule, corner, drill, laps }) =>
      rule === line.rule &&
      corner === line.corner &&
      drill === line.drill &&
      isShort(laps) === isShort(line.laps),
  );
  return same.length >= TWICE && same.slice(0, TWICE).every(({ isGood }) => !isGood);
}

const isShort = (laps = 0) => laps <= SHORT_RUN;
