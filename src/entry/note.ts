import type { Reading } from "#domain";
import { visiblePart } from "./characters.ts";
import { refuse } from "./refuse.ts";

/** Most characters (code points) of a lap's note. */
export const longestNote = 2_000;

/** Where the note's stroke stands, plain or full-width; the length of the text when there is none. */
export function strokeAt(text: string): number {
  const at = text.search(/[/／]/);
  return at < 0 ? text.length : at;
}

/**
 * Reads what stands behind the stroke, kept as typed but for the spaces around it.
 * @param limit how the sentence of a note that is too long begins and ends, around the number of characters it may have
 */
export function readNote(
  text: string,
  stroke: number,
  limit: readonly [string, string] = ["A lap's note has up to", "; the session's note holds more."],
): Reading<{ note?: string }> {
  const behind = text.slice(stroke + 1);
  const { start, end } = visiblePart(behind);
  const note = behind.slice(start, end);
  if (note === "") return { ok: true };
  if (note.length > longestNote) {
    const count = [...note].length;
    if (count > longestNote)
      return refuse(
        stroke + 1 + start,
        note.length,
        `The note has ${count} characters.`,
        `${limit[0]} ${longestNote}${limit[1]}`,
      );
  }
  return { ok: true, note };
}
