import type { Reading } from "#domain";
import { isPlainSeconds } from "./fullForms.ts";
import { readSectors, type Sectors } from "./sectors.ts";
import type { Word } from "./word.ts";

/** Where the driver says how many sectors a layout has, as the screens name it. */
export const sectorsPlace = "Corners, Layout, “Sectors the simulator times”";

const fewest = 3;
/** How far the sum of sectors may lie from the usual lap, as a share of it. */
const reach = 0.2;
/** The longest the first may be, as a share of all others together: a lap time before its sectors is about 1. */
const longestFirst = 0.75;

/**
 * Three or more times on a layout whose number of sectors is not known, read as sectors. With a usual lap their sum
 * must lie within a fifth of it. Without one they must be seconds under a minute, and the first must not look like
 * the sum of the others, which would be a lap time with its sectors.
 * @param nearMs the usual lap, where there is one
 * @returns the sectors; or undefined where they may as well be something else
 */
export function findSectors(
  words: readonly Word[],
  displayDecimals: number,
  nearMs: number | undefined,
): Sectors | undefined {
  const sectors = severalTimes(words, displayDecimals);
  if (!sectors?.ok) return undefined;
  const isPlausible =
    nearMs === undefined
      ? words.every(({ text }) => isPlainSeconds(text)) && isFirstOneOfMany(sectors)
      : Math.abs(sectors.ms - nearMs) <= reach * nearMs;
  return isPlausible ? sectors : undefined;
}

/** Whether the times look like sectors, and not like a lap time in front of its sectors. */
export function looksLikeSectors(words: readonly Word[], displayDecimals: number): Sectors | undefined {
  const sectors = severalTimes(words, displayDecimals);
  return sectors?.ok && isFirstOneOfMany(sectors) ? sectors : undefined;
}

function severalTimes(words: readonly Word[], displayDecimals: number): Reading<Sectors> | undefined {
  return words.length < fewest ? undefined : readSectors(words, displayDecimals);
}

function isFirstOneOfMany({ times: [first = 0], ms }: Sectors): boolean {
  return first < longestFirst * (ms - first);
}
