import { lapRange } from "#domain";
import { quoted, refuse } from "./refuse.ts";

/**
 * A refusal of a lap time that none can be, or undefined.
 * @param text what it was read from, quoted in the refusal
 */
export function refuseOutside(ms: number, text: string) {
  if (ms < lapRange.least)
    return refuse(
      0,
      text.length,
      `${quoted(text)} is under a tenth of a second.`,
      "Write a time from 0.1 s up, such as 1:23.456.",
    );
  if (ms > lapRange.most)
    return refuse(
      0,
      text.length,
      `${quoted(text)} is over 24 hours.`,
      "Write a time up to 24 hours, such as 1:23.456.",
    );
  return undefined;
}
