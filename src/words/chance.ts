import { counted } from "./counted.ts";

/** The base that every chance is told with. */
export const TWENTY = 20;

/** The word for a number of chances in 20, up to each bound; beyond the last "very likely". */
const words = [
  [2, "very unlikely"],
  [5, "unlikely"],
  [8, "less likely than not"],
  [11, "as likely as not"],
  [14, "more likely than not"],
  [17, "likely"],
] as const;

/**
 * A chance told with one base, twenty. What is not quite never or always is not called so.
 * @param chance fraction from 0 to 1
 * @example sayChance(0.7) // "14 chances in 20"
 * @example sayChance(0.01) // "fewer than 1 chance in 20"
 */
export function sayChance(chance: number): string {
  const reached = Math.round(chance * TWENTY);
  if (reached === 0) return `fewer than 1 chance in ${TWENTY}`;
  if (reached === TWENTY) return `more than ${TWENTY - 1} chances in ${TWENTY}`;
  return `${counted(reached, "chance")} in ${TWENTY}`;
}

/**
 * The word for a chance, to stand beside its number: a word alone is read differently by everyone.
 * @param chance fraction from 0 to 1
 * @example chanceWord(0.5) // "as likely as not"
 */
export function chanceWord(chance: number): string {
  const reached = Math.round(chance * TWENTY);
  return words.find(([bound]) => reached <= bound)?.[1] ?? "very likely";
}
