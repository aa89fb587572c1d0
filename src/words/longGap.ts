import { counted } from "./counted.ts";
import { sayHours } from "./practice.ts";

const minute = 60_000;

/**
 * The time between two laps of one run, and what it looks like.
 * @example askLongGap(540_000) // "9 minutes between these laps. Begin a new run here?"
 */
export function askLongGap(ms: number): string {
  const minutes = Math.max(1, Math.round(ms / minute));
  const long = minutes < 120 ? counted(minutes, "minute") : sayHours(ms);
  return `${long} between these laps. Begin a new run here?`;
}
