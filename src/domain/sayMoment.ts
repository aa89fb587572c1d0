import { sayDay } from "./sayDate.ts";
import { practiceDay, timeOfDay } from "./zones.ts";

/** An instant by the clock on the wall of a zone: "Wednesday 14 October, 23:05". */
export function sayMoment(epochMs: number, zone: string): string {
  return `${sayDay(practiceDay(epochMs, zone, 0))}, ${timeOfDay(epochMs, zone)}`;
}
