import type { ComboReview } from "#stats";
import { percentsOfALap } from "./amount.ts";
import { daysOfPage } from "./progress.ts";
import { sayTooFew } from "./reason.ts";
import { type Told, trendReading, trendTitle } from "./trendSays.ts";

type Reviewed = Pick<ComboReview, "steadiness" | "points">;

/**
 * Whether the driver got steadier: the trend of the scatter in percent of the usual lap.
 * @example "Steadier by 0.12 % of a lap in 8 weeks, very likely at least 0.04 % of a lap"
 * @example "Not getting steadier or less steady so far"
 */
export function steadinessTitle({ steadiness, points }: Reviewed): string {
  return steadiness.known ? trendTitle(steadiness.value, told(points)) : sayTooFew(steadiness.reason);
}

/** One or two sentences under it. */
export function steadinessReading({ steadiness, points }: Reviewed): string {
  if (steadiness.known) return trendReading(steadiness.value, told(points));
  return "Each session's scatter is drawn with its interval; whether it gets less needs more sessions.";
}

function told(points: Reviewed["points"]): Told {
  return { words: { fall: "steadier", rise: "less steady", unit: percentsOfALap }, days: daysOfPage(points) };
}
