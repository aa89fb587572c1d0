import { formatLapTime } from "#domain";
import type { SessionChart } from "#stats";
import { listed } from "./counted.ts";

/**
 * What the individuals chart of one session finds.
 * @example "2 of 14 pace laps worth a second look"
 */
export function individualsTitle({ laps, pointedAt }: SessionChart): string {
  if (laps.length < 5) return `Not enough pace laps yet: ${laps.length} of 5`;
  return pointedAt.length === 0
    ? `None of ${laps.length} pace laps stands out`
    : `${pointedAt.length} of ${laps.length} pace laps worth a second look`;
}

/** Its centre and limits, and how often chance alone points at a lap. */
export function individualsReading({ laps, chart, pointedAt }: SessionChart): string {
  if (chart === undefined || laps.length < 5) return "The limits need five pace laps.";
  const numbers = pointedAt.map(({ index }) => `lap ${index + 1}`);
  const which = pointedAt.length === 0 ? "" : ` Pointed at: ${listed(numbers)}.`;
  const limits = `Mean ${formatLapTime(chart.centre)}, limits ${formatLapTime(chart.lower)} and ${formatLapTime(chart.upper)}.`;
  return `${limits}${which} One run in four has one by chance; what it was, you decide.`;
}
