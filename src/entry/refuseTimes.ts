/** What is said about several times of one line that cannot be read together. */
import { formatLapTime } from "#domain";
import { looksLikeSectors, sectorsPlace } from "./foundSectors.ts";
import { readFullForm } from "./fullForms.ts";
import type { WordOptions } from "./readWord.ts";
import { quoted, refuse } from "./refuse.ts";
import { wholeTime } from "./wholeTime.ts";
import type { Word } from "./word.ts";

/** Where all words lie, for a problem that is about them together. */
function spanOf(words: readonly Word[]): readonly [at: number, length: number] {
  const at = words[0]?.start ?? 0;
  const last = words.at(-1);
  return [at, last === undefined ? 0 : last.start + last.text.length - at];
}

/** One time with spaces in place of its colon and its point: "1 24 300" is 1:24.300. */
export function refuseSpaced(words: readonly Word[]) {
  const parts = words.map(({ text }) => text);
  const typed = parts.join(" ");
  if (!/^(?:\d{1,2} \d{2} \d{1,3}|\d{1,2} \d{2}[.,]\d{1,3}|\d{2} \d{3})$/.test(typed)) return undefined;
  const isInMinutes = parts.length === 3 || /[.,]/.test(typed);
  const meant = isInMinutes ? typed.replace(" ", ":").replace(/[ ,]/, ".") : typed.replace(" ", ".");
  if (readFullForm(meant)?.ok !== true) return undefined;
  return refuse(
    ...spanOf(words),
    `A space separates times, so ${quoted(typed)} is not one.`,
    `Write ${meant}.`,
  );
}

/** Times that look like sectors whose sum is far from every lap here. */
export function refuseUnlikelySectors(words: readonly Word[], { displayDecimals, nearMs }: WordOptions) {
  const sectors = looksLikeSectors(words, displayDecimals);
  if (sectors === undefined) return undefined;
  const usual = nearMs === undefined ? "" : `, far from your usual ${formatLapTime(nearMs)}`;
  return refuse(
    ...spanOf(words),
    `It is not clear that these are sectors: they add up to ${sectors.sum}${usual}.`,
    `Write the lap time before them, ${wholeTime(sectors.ms, 3)} ${words
      .map(({ text }) => text)
      .join(" ")
      .slice(0, 60)}, or say how many sectors there are: ${sectorsPlace}.`,
  );
}

/** A number of times that the layout does not have, or one that is not clear. */
export function refuseCount(words: readonly Word[], sectors: number | undefined) {
  const given = words.length;
  if (sectors === undefined)
    return given >= 3
      ? undefined
      : refuse(
          ...spanOf(words),
          `It is not clear whether ${quoted(words.map(({ text }) => text).join(" "))} are laps or sectors.`,
          `Write one lap a line, or the lap time and then its sectors: 1:23.420 27.1 31.42 24.9. Where a lap has two sectors, say so once: ${sectorsPlace}.`,
        );
  if (given === sectors + 1 && sectors >= 2) return undefined;
  if (sectors >= 2)
    return refuse(
      ...spanOf(words),
      `This layout has ${sectors} sectors, and ${given} times are typed.`,
      `Write one lap time, the ${sectors} sectors, or the lap time and then the ${sectors} sectors. The number is set at ${sectorsPlace}.`,
    );
  return refuse(
    ...spanOf(words),
    "This layout has no sectors, and more than one time is typed.",
    `Write one lap a line, such as 1:23.456. If it has sectors, say so once: ${sectorsPlace}.`,
  );
}
