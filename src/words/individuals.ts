import { formatLapTime } from "#domain";
import { chanceOfPointing, type SessionChart } from "#stats";
import { TWENTY } from "./chance.ts";
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

/**
 * How often chance alone makes a lap worth a second look, for so many laps.
 * @example sayByChance(20, "run") // "By chance alone 6 of 20 runs this long have one."
 */
export function sayByChance(laps: number, thing: "run" | "session"): string {
  const often = Math.round(chanceOfPointing(laps) * TWENTY);
  return `By chance alone ${often === TWENTY ? `more than ${TWENTY - 1}` : often} of ${TWENTY} ${thing}s this long have one.`;
}

/** Its centre and limits, and how often chance alone points at a lap. */
export function individualsReading({ laps, chart, pointedAt }: SessionChart): string {
  if (chart === undefined || laps.length < 5) return "The limits need five pace laps.";
  const numbers = pointedAt.map(({ index }) => `lap ${index + 1}`);
  const which = pointedAt.length === 0 ? "" : ` Worth a second look: ${listed(numbers)}.`;
  const limits = `Mean ${formatLapTime(chart.centre)}, limits ${formatLapTime(chart.lower)} and ${formatLapTime(chart.upper)}.`;
  return `${limits}${which} ${sayByChance(laps.length, "session")} What it was, you decide.`;
}
