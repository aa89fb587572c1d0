/**
 * Chance of a run without a mistake: the mean of (1 − p)^N over what the laps so far say of the rate p (a beta
 * distribution after Jeffreys' prior, ½ and ½), so that no mistakes in ten laps do not promise none in forty.
 * Closed form: the product of (n − m + ½ + i)/(n + 1 + i) for i = 0 … N − 1.
 * @param mistakes laps with a mistake so far
 * @param laps all laps so far
 * @param count laps of the run to come
 * @example cleanRunChance(0, 0, 1) // 0.5
 */
export function cleanRunChance(mistakes: number, laps: number, count: number): number {
  let chance = 1;
  for (let i = 0; i < count; i++) chance *= (laps - mistakes + 0.5 + i) / (laps + 1 + i);
  return chance;
}
