import type { Reading } from "#domain";
import type { EntryContext, EntryForm } from "./context.ts";
import { findSectors } from "./foundSectors.ts";
import { isPlainSeconds } from "./fullForms.ts";
import { readWord, type WordOptions } from "./readWord.ts";
import { shifted } from "./refuse.ts";
import { refuseCount, refuseSpaced, refuseUnlikelySectors } from "./refuseTimes.ts";
import { checkSum, readSectors, type Sectors } from "./sectors.ts";
import type { Word } from "./word.ts";

/** The times of one line, read. */
export interface LapTimes {
  readonly ms: number;
  readonly decimals: number;
  readonly sectors?: readonly number[];
  readonly sectorDecimals?: readonly number[];
  readonly form: EntryForm;
  /** Seconds under a minute with nothing known to complete them from. */
  readonly mayLackMinute: boolean;
  /** Set for digits that could as well have been completed to another time. */
  readonly isUnclear?: boolean | undefined;
  /** The sectors, where nothing but their number says that they are some. */
  readonly found?: Sectors;
}

/**
 * Reads the times of a line: one lap time; as many sectors as the layout has; or a lap time and then the sectors.
 * Where the number of sectors is not known, three or more times that are no lap time with its sectors are sectors if
 * their sum is a plausible lap.
 */
export function readLapTimes(
  words: readonly [Word, ...Word[]],
  options: WordOptions,
  context: EntryContext,
): Reading<LapTimes> {
  const spaced = refuseSpaced(words);
  if (spaced !== undefined) return spaced;
  if (words.length > 1 && words.length === context.sectors) {
    const sectors = readSectors(words, options.displayDecimals);
    return sectors.ok ? sectorsAlone(sectors) : sectors;
  }
  const wrongCount = words.length > 1 ? refuseCount(words, context.sectors) : undefined;
  if (wrongCount !== undefined) return wrongCount;
  const read = readTimeFirst(words, options);
  if (read.ok || context.sectors !== undefined) return read;
  const found = findSectors(words, options.displayDecimals, options.nearMs);
  if (found !== undefined) return { ...sectorsAlone(found), ...(options.nearMs === undefined && { found }) };
  return refuseUnlikelySectors(words, options) ?? read;
}

function sectorsAlone({ ms, decimals, times, timesDecimals }: Sectors) {
  const each = { sectors: times, sectorDecimals: timesDecimals };
  return { ok: true, ms, decimals, ...each, form: "sectors", mayLackMinute: false } as const;
}

function readTimeFirst(words: readonly [Word, ...Word[]], options: WordOptions): Reading<LapTimes> {
  const [first, ...rest] = words;
  const time = readWord(first.text, options);
  if (!time.ok) return { ok: false, problem: shifted(time.problem, first.start) };
  const { ms, decimals, form, isUnclear } = time;
  const mayLackMinute = options.nearMs === undefined && isPlainSeconds(first.text);
  if (rest.length === 0) return { ok: true, ms, decimals, form, mayLackMinute, isUnclear };
  const sectors = readSectors(rest, options.displayDecimals);
  if (!sectors.ok) return sectors;
  return (
    checkSum(time, first, sectors) ?? {
      ok: true,
      ms,
      decimals,
      sectors: sectors.times,
      sectorDecimals: sectors.timesDecimals,
      form,
      mayLackMinute: false,
    }
  );
}
