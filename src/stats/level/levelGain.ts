import { type Figure, known } from "#domain";
import type { PageSession } from "../period/pageHistory.ts";
import { type GainDays, type LevelGain, levelOver } from "./levelOver.ts";

/**
 * How much faster than at the beginning of some days: the one answer to that question, on Review, in the week and across
 * combos. Rests on all sessions of the page up to the last day, not only on those within. Our methods, §5.
 * @param history sessions of one page with a median, oldest first
 * @returns a reason with fewer than four of them in all, or fewer than two in the days
 */
export function levelGain(history: readonly PageSession[], days: GainDays): Figure<LevelGain> {
  const over = levelOver(history, days);
  return over.known ? known(over.value.gain) : over;
}
