import { type CalendarDate, type Figure, known } from "#domain";
import { seasonBegins } from "../combo/season.ts";
import { type LevelGain, type LevelPoint, levelOver } from "../level/levelOver.ts";
import type { PageSession } from "../period/pageHistory.ts";

/** What the level did in the last twelve weeks. */
export interface SeasonLevel {
  readonly gain: Figure<LevelGain>;
  /** At each session of those weeks; none where the gain is not known. */
  readonly line: readonly LevelPoint[];
}

/**
 * How far the level of a page has moved in twelve weeks, and its line through them.
 * @param history sessions of the page with a median, oldest first
 */
export function seasonLevel(history: readonly PageSession[], today: CalendarDate): SeasonLevel {
  const over = levelOver(history, { from: seasonBegins(today) });
  if (!over.known) return { gain: over, line: [] };
  return { gain: known(over.value.gain), line: over.value.line() };
}
