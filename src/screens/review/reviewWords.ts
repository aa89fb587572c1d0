import { formatLapTime, formatSeconds, sayDate } from "#domain";
import type { Period } from "#state/address.ts";
import type { ComboReview } from "#stats";
import { sayTooFew } from "#words";
import { rollingPeriods } from "./periods.ts";

/** "the last 12 weeks" */
export function sayPeriod(period: Period): string {
  if (period.kind === "dates") return `${sayDate(period.from)} to ${sayDate(period.to)}`;
  return rollingPeriods.find(({ kind }) => kind === period.kind)?.phrase ?? "all the time";
}

/** How many sessions and laps, and what stays out of the figures. */
export function sayLeftOut(review: ComboReview, counts: string): string {
  const { sessions, sessionsOnOldPages, guestLaps } = review;
  const count = (number: number, thing: string) => `${number} ${thing}${number === 1 ? "" : "s"}`;
  return [
    count(sessions, "session"),
    counts,
    guestLaps > 0 && `${count(guestLaps, "lap")} of guests beside them`,
    sessionsOnOldPages > 0 && `${count(sessionsOnOldPages, "session")} of older pages in grey, in no figure`,
  ]
    .filter((part) => part !== false)
    .join(" · ");
}

export function sayProgress({ trend }: ComboReview, period: Period) {
  if (!trend.known) return { title: sayTooFew(trend.reason), reading: "" };
  const { finding, perWeek } = trend.value;
  return { title: `${finding} in ${sayPeriod(period)}`, reading: formatSeconds(perWeek.slope) };
}

export function saySteadiness({ steadiness }: ComboReview) {
  if (!steadiness.known) return { title: sayTooFew(steadiness.reason), reading: "" };
  return { title: steadiness.value.finding, reading: formatLapTime(1) };
}
