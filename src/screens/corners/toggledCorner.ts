/**
 * The corners chosen after a press on one: it is chosen, or let go.
 * @param all numbers in lap order, in which the chosen ones are given
 */
export function toggledCorner(all: readonly number[], chosen: readonly number[], pressed: number): number[] {
  return all.filter((number) => (number === pressed) !== chosen.includes(number));
}
