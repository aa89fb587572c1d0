import { cornerRanges, type Reading } from "#domain";
import { quoted, refuse } from "./refuse.ts";

/** A number, or the first and the last of several in a row. */
const shape = /^(\d{1,3})(?:[-–](\d{1,3}))?$/;

/**
 * Reads numbers of corners typed with spaces or commas between them: "3 5 9", or several in a row: "1-12".
 * @returns the numbers in lap order, each once; an empty text gives none; or what is wrong
 */
export function readCornerNumbers(text: string): Reading<{ readonly numbers: readonly number[] }> {
  const numbers = new Set<number>();
  for (const { 0: word, index } of text.matchAll(/[^\s,;]+/g)) {
    const [, from = "", to = from] = shape.exec(word) ?? [];
    const [first, last] = [Number(from), Number(to)];
    const { least, most } = cornerRanges.number;
    if (from === "" || first < least || last > most || first > last)
      return refuse(
        index,
        word.length,
        `${quoted(word)} is not the number of a corner.`,
        `Write numbers from ${least} to ${most} with spaces between them, such as 3 5 9, or 1-12 for the first twelve.`,
      );
    for (let number = first; number <= last; number += 1) numbers.add(number);
  }
  return { ok: true, numbers: [...numbers].sort((a, b) => a - b) };
}
