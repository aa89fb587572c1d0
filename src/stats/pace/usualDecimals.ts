/**
 * To how many decimals a usual lap is known: those that more than half of its laps have, so that no lap in tenths is shown
 * to thousandths, and a single one among many takes nothing away.
 * @param laps those whose median it is; decimals not said are three
 * @returns 0 to 3; three for no laps
 */
export function usualDecimals(laps: readonly { readonly decimals?: number | undefined }[]): number {
  const known = laps.map(({ decimals = 3 }) => decimals).sort((a, b) => a - b);
  return known[Math.floor((known.length - 1) / 2)] ?? 3;
}
