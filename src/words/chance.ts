const FUTURES = 20;

/**
 * A chance told with one base, twenty, and both ways. What is not quite never or always is not called so.
 * @param chance fraction from 0 to 1
 * @example sayChance(0.7) // "reached in 14 of 20 futures, missed in 6"
 * @example sayChance(0.01) // "reached in fewer than 1 of 20 futures, missed in more than 19"
 */
export function sayChance(chance: number): string {
  const reached = Math.round(chance * FUTURES);
  if (reached === 0) return "reached in fewer than 1 of 20 futures, missed in more than 19";
  if (reached === FUTURES) return "reached in more than 19 of 20 futures, missed in fewer than 1";
  return `reached in ${reached} of 20 futures, missed in ${FUTURES - reached}`;
}
