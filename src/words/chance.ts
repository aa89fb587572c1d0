/** The one base in which chances are told. */
export const CHANCES = 20;

/**
 * A chance in words, always in twenty. What is not quite never or always is not called so.
 * @param chance fraction from 0 to 1
 * @example sayChance(0.7) // "14 chances in 20"
 * @example sayChance(0.01) // "less than 1 chance in 20"
 */
export function sayChance(chance: number): string {
  const reached = Math.round(chance * CHANCES);
  if (reached === 0) return `less than 1 chance in ${CHANCES}`;
  if (reached === CHANCES) return `more than ${CHANCES - 1} chances in ${CHANCES}`;
  return `${reached} ${reached === 1 ? "chance" : "chances"} in ${CHANCES}`;
}
