/**
 * Why a figure is not given: how many of a thing it needs and how many there are. The plural falls before
 * "with" or "of": "session with 5 pace laps" becomes "sessions with 5 pace laps".
 * @example needs(5, "pace lap", 3) // "needs 5 pace laps, has 3"
 */
export function needs(least: number, thing: string, has: number): string {
  const [name = "", ...rest] = thing.split(/(?= (?:with|of) )/);
  return `needs ${least} ${name}${least === 1 ? "" : "s"}${rest.join("")}, has ${has}`;
}
