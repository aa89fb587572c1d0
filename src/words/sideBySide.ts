import type { Reason } from "#domain";
import type { SideBySide, SidesApart } from "#stats";
import { hundredths } from "./amount.ts";
import { asSentence, counted } from "./counted.ts";
import { sayReason } from "./reason.ts";
import { testRunSays, toldWhenOver } from "./rigTestProgress.ts";
import { isClear, isSame, pace, sayBetween, sayClear } from "./shift.ts";

/**
 * What stands first of two runs or sessions side by side.
 * @example "The later laps were faster by 0.24 s, very likely at least 0.05 s"
 * @example "May be chance: between 0.12 s faster and 0.30 s slower"
 */
export function sideBySideTitle({ apart, shift }: Pick<SideBySide, "apart" | "shift">): string {
  if (apart === "lasting test") return toldWhenOver;
  if (apart !== undefined) return "Their lap times do not compare";
  if (!shift.known) return "Faster or slower cannot be told yet";
  if (isSame(shift.value)) return "No difference";
  if (!isClear(shift.value)) return `May be chance: ${sayBetween(shift.value, hundredths, pace)}`;
  const what = shift.value.by === "lap" ? "The later laps were" : "The later session was";
  return `${what} ${sayClear(shift.value, hundredths, pace)}`;
}

/** What the difference rests on, and how much of it to believe. */
export function sideBySideReading({ apart, shift }: Pick<SideBySide, "apart" | "shift">): string {
  if (apart !== undefined) return sayApart(apart);
  if (!shift.known)
    return `${asSentence(sayTooFewOnOneSide(shift.reason))}. What differs is shown all the same.`;
  const { by, first, second } = shift.value;
  if (by === "run")
    return `Counted by the usual laps of ${first} and ${counted(second, "run")}, because laps of one run are alike.`;
  return `It tells of these ${first} and ${counted(second, "lap")} alone: two runs of one evening can differ as much with nothing changed.`;
}

/** "each session needs 3 runs of 5 pace laps, and one has 1" */
function sayTooFewOnOneSide(reason: Reason): string {
  if (!("needs" in reason)) return sayReason(reason);
  const { needs, has, each } = reason;
  return each === undefined
    ? `each run needs ${needs} laps that count, and one has ${has}`
    : `each session needs ${needs} runs of ${each.needs} pace laps, and one has ${has}`;
}

function sayApart(apart: SidesApart): string {
  const compared = "What compares is set side by side in percent of each one's usual lap.";
  if (apart === "lasting test") return testRunSays;
  if (apart === "combo") return `Two combos have times of their own. ${compared}`;
  if (apart === "page") return `A new page lies between them. ${compared}`;
  return `${asSentence(sayReason({ because: "not compared", run: apart }))}. ${compared}`;
}

/** "between 0.05 and 0.43 s faster": the interval beside the difference of two usual laps. */
export function sayShiftEnds(ends: { readonly low: number; readonly high: number }): string {
  return sayBetween(ends, hundredths, pace);
}
