import { daysBetween } from "#domain";
import type { ComboReview } from "#stats";
import { hundredths } from "./amount.ts";
import { lower } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { pace } from "./shift.ts";
import { type Told, trendBy100Laps, trendReading, trendTitle } from "./trendSays.ts";

type Reviewed = Pick<ComboReview, "trend" | "points">;

/**
 * What the progress chart finds, from a test that can say "no clear change".
 * @example "Usual lap faster by 0.42 s in 6 weeks, surely more than 0.20 s"
 */
export function progressTitle({ trend, points }: Reviewed): string {
  if (!trend.known) return sayTooFew(trend.reason);
  const title = trendTitle(trend.value, told(points));
  return trend.value.finding === "no clear change" ? title : `Usual lap ${lower(title)}`;
}

/** One or two sentences under it: sessions, interval, what is ruled out, when an answer is likely. */
export function progressReading({ trend, points }: Reviewed): string {
  if (trend.known) return trendReading(trend.value, told(points));
  return "Each session's usual lap is drawn; whether they rise or fall needs more of them.";
}

/** The trend by a hundred laps, for who wants it; empty where there is none. */
export function progressBy100Laps({ trend }: Pick<ComboReview, "trend">): string {
  return trend.known ? trendBy100Laps(trend.value, { ...pace, unit: hundredths }) : "";
}

function told(points: Reviewed["points"]): Told {
  return { words: { ...pace, unit: hundredths }, days: daysOfPage(points) };
}

/** Days from the first to the last session of the present page with a usual lap. */
export function daysOfPage(points: Reviewed["points"]): number {
  const dates = points
    .filter((point) => point.isPresentPage && point.median !== undefined)
    .map((point) => point.date);
  const [first, last] = [dates[0], dates.at(-1)];
  return first === undefined || last === undefined ? 0 : daysBetween(first, last);
}
