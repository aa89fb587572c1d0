import type { Standing } from "#combo";
import { sayDate } from "#domain";
import type { TargetFigure, TargetState } from "#stats";
import { counted } from "./counted.ts";
import { bestFigure, sayKnownFigure, sayTargetFigure } from "./targets.ts";

/** How it stands with a target, in one sentence. */
export function sayStanding(state: TargetState): string {
  const { standing } = state;
  switch (standing.kind) {
    case "older page":
      return "Set before the change; no longer comparable.";
    case "reached":
      return `Reached on ${sayDate(standing.on)}.`;
    case "reached before":
      return `Reached on ${sayDate(standing.on)}, before it was set.`;
    case "missed":
      return sayMissed(state, standing);
    case "open": {
      const left = sayDaysLeft(standing.daysLeft);
      if (standing.lostOn === undefined) return left;
      // A level is only known so far; a session's own figure is what it is.
      const lost = state.target.kind === "median" ? "very likely lost again since" : "lost again on";
      return `Reached before, and ${lost} ${sayDate(standing.lostOn)}. ${left}`;
    }
  }
}

function sayMissed(
  { target, closest }: TargetState,
  { lostOn, reachedOn }: Extract<Standing, { kind: "missed" }>,
): string {
  if (lostOn !== undefined) return `Missed: reached before its date, and lost again on ${sayDate(lostOn)}.`;
  if (reachedOn !== undefined) return `Missed by its date; reached on ${sayDate(reachedOn)}.`;
  if (closest === undefined) return "Missed.";
  const figure = sayTargetFigure(target.kind, closest);
  return target.kind === "median"
    ? `Missed. Your usual lap came to ${figure} in that time.`
    : `Missed. Your ${bestFigure(target)} in that time: ${figure}${noFaster(target, closest)}.`;
}

/** The time it was set at, where nothing since was faster. */
function noFaster({ kind, start }: TargetState["target"], closest: TargetFigure): string {
  if (kind !== "best" || start === undefined || closest.value < start) return "";
  return `, not faster than the ${sayKnownFigure(kind, start)} it was set at`;
}

function sayDaysLeft(days: number | undefined): string {
  if (days === undefined) return "No date is set.";
  return days === 0 ? "Today is the last day." : `${counted(days, "day")} left.`;
}

/**
 * The same as short as a table wants it, as it stood at the end of a week.
 * @param isNewlyReached it was reached in the week
 */
export function sayStandingInShort(
  { standing }: Pick<TargetState, "standing">,
  isNewlyReached: boolean,
): string {
  switch (standing.kind) {
    case "older page":
      return "no longer comparable";
    case "reached":
    case "reached before":
      return isNewlyReached ? "reached this week" : "reached before";
    case "missed":
      return "missed";
    case "open":
      return standing.lostOn === undefined ? "to be reached" : "to be reached again";
  }
}
