import type { Reading } from "#domain";
import type { EntryContext, EntryForm } from "./context.ts";
import { isPlainSeconds } from "./fullForms.ts";
import { readWord, type WordOptions } from "./readWord.ts";
import { quoted, refuse, shifted } from "./refuse.ts";
import { checkSum, readSectors } from "./sectors.ts";
import type { Word } from "./word.ts";

/** The times of one line, read. */
export interface LapTimes {
  readonly ms: number;
  readonly decimals: number;
  readonly sectors?: readonly number[];
  readonly form: EntryForm;
  /** Seconds under a minute with nothing known to complete them from. */
  readonly mayLackMinute: boolean;
}

/**
 * Reads the times of a line: one lap time; as many sectors as the layout has; or a lap time and then the sectors.
 * Where the number of sectors is not known, times are sectors only behind a lap time.
 */
export function readLapTimes(
  words: readonly [Word, ...Word[]],
  options: WordOptions,
  context: EntryContext,
): Reading<LapTimes> {
  const [first, ...rest] = words;
  if (rest.length > 0 && words.length === context.sectors) {
    const sectors = readSectors(words, options.displayDecimals);
    if (!sectors.ok) return sectors;
    const { ms, decimals, times } = sectors;
    return { ok: true, ms, decimals, sectors: times, form: "sectors", mayLackMinute: false };
  }
  const wrongCount = rest.length > 0 ? refuseCount(words, context.sectors) : undefined;
  if (wrongCount !== undefined) return wrongCount;
  const time = readWord(first.text, options);
  if (!time.ok) return { ok: false, problem: shifted(time.problem, first.start) };
  const { ms, decimals, form } = time;
  const mayLackMinute = options.nearMs === undefined && isPlainSeconds(first.text);
  if (rest.length === 0) return { ok: true, ms, decimals, form, mayLackMinute };
  const sectors = readSectors(rest, options.displayDecimals);
  if (!sectors.ok) return sectors;
  return (
    checkSum(time, first, sectors) ?? {
      ok: true,
      ms,
      decimals,
      sectors: sectors.times,
      form,
      mayLackMinute: false,
    }
  );
}

function refuseCount(words: readonly Word[], sectors: number | undefined) {
  const [first] = words;
  const last = words.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const length = last.start + last.text.length - first.start;
  const given = words.length;
  if (sectors !== undefined && sectors >= 2) {
    if (given === sectors + 1) return undefined;
    return refuse(
      first.start,
      length,
      `This layout has ${sectors} sectors, and ${given} times are typed.`,
      `Write one lap time, the ${sectors} sectors, or the lap time and then the ${sectors} sectors.`,
    );
  }
  if (sectors === undefined && given >= 3) return undefined;
  return refuse(
    first.start,
    length,
    sectors === undefined
      ? `It is not clear whether ${quoted(words.map(({ text }) => text).join(" "))} are laps or sectors.`
      : "This layout has no sectors, and more than one time is typed.",
    sectors === undefined
      ? "Write one lap a line, or the lap time and then its sectors: 1:23.420 27.1 31.42 24.9."
      : "Write one lap a line, such as 1:23.456.",
  );
}
