/**
 * Why a figure is not given: how many of a thing it needs and how many there are.
 * @example needs(5, "pace lap", 3) // "needs 5 pace laps, has 3"
 */
export function needs(least: number, thing: string, has: number): string {
  return `needs ${least} ${thing}${least === 1 ? "" : "s"}, has ${has}`;
}
