import { type Corner, cornersOfSector } from "#domain";
import type { SessionReport } from "#stats";
import { sayMeasuredBy } from "./account.ts";
import { hundredths, sayAmount } from "./amount.ts";
import { sayCorners } from "./cornersSay.ts";
import { learningEffort } from "./learningEffort.ts";
import type { NextRun } from "./suggestion.ts";

const practised = { reason: "measured on you", advice: "common practice, no source" } as const;

/**
 * What the next run may do about the largest line of a time account, with the laps it is of: another account may have another
 * one. Undefined where none is a loss.
 * @param work what costs most, and what it is measured against: undefined where each session has a time of its own
 * @param over "in this session", "this week"
 * @param corners of the layout, so that a sector is told with the corners known to lie in it
 */
export function workOnLine(
  { workOn, target }: Pick<SessionReport, "workOn" | "target">,
  laps: number,
  over: string,
  corners: readonly Corner[] = [],
): NextRun | undefined {
  if (workOn === undefined) return undefined;
  const cost = `${sayAmount(workOn.ms, hundredths)} a lap`;
  const aside = workOn.isOddAside ? ", laps confirmed as odd left aside" : "";
  const sector = workOn.sector === undefined ? undefined : sayPlace(workOn.sector + 1, corners);
  switch (workOn.line) {
    case "repeatability":
      return {
        suggestion: `Drive ${laps} laps as equal as you can: same brake points, same kerbs${sector ? `, ${sector} above all` : ""}.`,
        reason: `Uneven laps cost most ${over}: ${cost} between your best laps and your mean one${aside}.`,
        evidence: practised,
        check: "Less scatter in the next run.",
      };
    case "mistakes":
      return {
        suggestion: `${laps} laps at ${learningEffort}, with no off.`,
        reason: `Mistakes cost most ${over}: ${cost}, laps without a time not counted${aside}.`,
        evidence: practised,
        check: `${laps} laps without a mistake.`,
      };
    case "pace":
      return {
        suggestion: `Look at one lap of the replay from outside, ${sector ?? "corner by corner"}${sector ? " first" : ""}, then drive ${laps} laps on that line.`,
        reason: `Pace costs most ${over}: your best laps are ${cost} slower than ${sayMeasuredBy(target)}${aside}.`,
        evidence: practised,
        check: `Your best laps of the next run${sector ? `, and its best sector ${(workOn.sector ?? 0) + 1}` : ""}.`,
      };
  }
}

/** "sector 2 (corners 5 to 8)" */
function sayPlace(sector: number, corners: readonly Corner[]): string {
  const within = cornersOfSector(corners, sector);
  return within.length === 0 ? `sector ${sector}` : `sector ${sector} (${sayCorners(within)})`;
}
