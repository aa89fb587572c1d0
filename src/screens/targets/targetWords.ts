import { sayDate, type TargetKind } from "#domain";
import { counted, sayLapTime } from "#words";
import type { Standing } from "./targetStanding.ts";

/** How it stands with a target, in one sentence. */
export function sayStanding(standing: Standing, kind: TargetKind): string {
  switch (standing.kind) {
    case "older page":
      return "Set on an older page: times no longer compare with it.";
    case "not measured":
      return "Progress is followed for best lap and usual lap only.";
    case "reached": {
      const late = standing.daysLate > 0 ? `, ${counted(standing.daysLate, "day")} after its date` : "";
      return `Reached on ${sayDate(standing.on)}${late}.`;
    }
    case "reached before":
      return `Reached on ${sayDate(standing.on)}, before it was set.`;
    case "missed":
      return `Missed: ${sayClosest(standing, kind)}`;
    case "open":
      return sayDaysLeft(standing.daysLeft);
  }
}

function sayClosest({ closest }: Standing & { kind: "missed" }, kind: TargetKind): string {
  const isBest = kind === "best";
  return closest === undefined
    ? `no ${isBest ? "clean lap" : "session with 5 pace laps"} was driven from its setting to its date.`
    : `the ${isBest ? "best" : "fastest usual lap"} from its setting to its date was ${sayLapTime(closest.ms, closest.decimals)}.`;
}

function sayDaysLeft(days: number | undefined): string {
  if (days === undefined) return "No date is set.";
  return days === 0 ? "Today is the last day." : `${counted(days, "day")} left.`;
}
