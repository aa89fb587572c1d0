import { type EarlierTarget, sayDate } from "#domain";
import { counted, lower } from "./counted.ts";
import { sayTarget } from "./targets.ts";

/**
 * What a target was until it was changed.
 * @example "Until Thu 5 Nov 2026: best lap 1:24.000 by Sat 28 Nov 2026"
 */
export function sayEarlier(was: EarlierTarget): string {
  return `Until ${sayDate(was.untilDay)}: ${lower(sayTarget(was))}`;
}

/**
 * How often a target was changed, and when last.
 * @returns undefined where it never was
 * @example "2 times, last on Thu 5 Nov 2026"
 */
export function sayChanged(earlier: readonly EarlierTarget[] = []): string | undefined {
  const last = earlier.at(-1);
  if (last === undefined) return undefined;
  const day = sayDate(last.untilDay);
  return earlier.length === 1 ? `on ${day}` : `${counted(earlier.length, "time")}, last on ${day}`;
}
