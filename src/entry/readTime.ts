import type { Reading } from "#domain";
import { fold, placed, visiblePart } from "./characters.ts";
import { readWord } from "./readWord.ts";
import { refuse } from "./refuse.ts";
import type { ReadTime } from "./word.ts";

/** What is known when one time is read on its own. */
export interface TimeContext {
  /** The usual lap in ms, which short forms are completed from. */
  readonly nearMs?: number | undefined;
  /** The lap before in ms, which "+0.6" is measured from. */
  readonly previousMs?: number | undefined;
  readonly previousDecimals?: number | undefined;
  /** Decimals of the simulator's display, for digits without a point; 3 unless said. */
  readonly displayDecimals?: number | undefined;
  /** Refuses a short form without its tens of seconds. */
  readonly mustTypeTens?: boolean | undefined;
}

/**
 * Reads one lap time in any form of the entry line: 1:23.456 · 1:23,456 · 1'23"456 · 1.23.456 · 83.456 · 1:02:03.4 ·
 * 123456 · the short forms 4912, 24912, 24.9 · +0.6. Never rounds and never throws on any text. Without a usual lap
 * the short forms of digits are refused, and seconds with a point stand as they are.
 * @returns ms and the number of decimals typed, or what is wrong and what would be right
 */
export function readTime(text: string, context: TimeContext = {}): Reading<ReadTime> {
  const { start, end } = visiblePart(text);
  if (start === end) return refuse(0, 0, "No time is typed.", "Write a time such as 1:23.456.");
  const folding = fold(text);
  if (!folding.ok) return folding;
  const { text: word, places } = folding.folded;
  const { previousMs, previousDecimals = 3, displayDecimals = 3, nearMs, mustTypeTens } = context;
  const reading = readWord(word, {
    nearMs,
    mustTypeTens,
    displayDecimals,
    base: previousMs === undefined ? undefined : { ms: previousMs, decimals: previousDecimals },
    baseName: "the lap before",
  });
  return reading.ok ? reading : { ok: false, problem: placed(reading.problem, places) };
}
