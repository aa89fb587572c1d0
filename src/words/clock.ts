import { isKnownZone, timeOfDay } from "#domain";

/**
 * What the clock on the driver's wall showed. Where this browser does not know the zone, UTC's clock, and that it is.
 * @example sayClock(at, "Europe/Berlin") // "19:00"
 * @example sayClock(at, "Mars/Base") // "18:00 UTC (this browser does not know the time zone Mars/Base)"
 */
export function sayClock(epochMs: number, zone: string): string {
  const clock = timeOfDay(epochMs, zone);
  return isKnownZone(zone) ? clock : `${clock} UTC (this browser does not know the time zone ${zone})`;
}
