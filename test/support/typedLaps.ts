import fc from "fast-check";
import { formatLapTime, type Lap, remarkKinds } from "#domain";
import { type EntryContext, isOdd, parseEntry, sourceOf } from "#entry";
import { aContext } from "../unit/entry/aContext.ts";

/** A lap as it is stored, without its place and its stamps. */
export type StoredLap = Pick<Lap, "source" | "remarks"> &
  Partial<Pick<Lap, "ms" | "decimals" | "sectors" | "sectorDecimals" | "note" | "isNotBest" | "isOdd">>;

const decimals = fc.integer({ min: 0, max: 3 });
const cut = (ms: number, digits: number) => ms - (ms % 10 ** (3 - digits));
/** Sectors about half a minute long, each typed with as many digits as the driver liked. */
const sectors = fc
  .array(fc.tuple(fc.integer({ min: 24_000, max: 31_999 }), fc.integer({ min: 1, max: 3 }), fc.boolean()), {
    minLength: 3,
    maxLength: 3,
  })
  .map((all) =>
    all.map(([ms, digits, hasMinute]) =>
      hasMinute
        ? { ms: cut(ms, 0), text: `0:${formatLapTime(cut(ms, 0), 0)}` }
        : { ms: cut(ms, digits), text: formatLapTime(ms, digits) },
    ),
  );
const written = (all: readonly { readonly text: string }[]) => all.map(({ text }) => text).join(" ");
const sumOf = (all: readonly { readonly ms: number }[]) => all.reduce((sum, { ms }) => sum + ms, 0);

const times = fc.oneof(
  fc
    .tuple(fc.integer({ min: 61_000, max: 4_000_000 }), decimals)
    .map(([ms, digits]) => formatLapTime(ms, digits)),
  fc
    .tuple(fc.integer({ min: 80_000, max: 87_000 }), decimals)
    .map(([ms, digits]) => formatLapTime(ms, digits)),
  fc.integer({ min: 80_000, max: 89_999 }).map((ms) => String(ms)),
  fc
    .tuple(fc.integer({ min: 21_000, max: 26_000 }), decimals)
    .map(([ms, digits]) => formatLapTime(ms, digits)),
  fc.tuple(fc.integer({ min: 1000, max: 5999 }), decimals).map(([ms, digits]) => formatLapTime(ms, digits)),
  fc
    .tuple(fc.constantFrom("+", "-"), fc.integer({ min: 1, max: 9_999 }), decimals)
    .map(([sign, ms, digits]) => sign + (ms / 1000).toFixed(digits)),
  sectors.map(written),
  fc.tuple(sectors, decimals).map(([all, digits]) => `${formatLapTime(sumOf(all), digits)} ${written(all)}`),
);
const letter = fc
  .tuple(
    fc.constantFrom(...remarkKinds.map((one) => one.letter)),
    fc.option(fc.integer({ min: 1, max: 12 }), { nil: undefined }),
  )
  .map(([one, corner]) => (corner === undefined ? one : `${one}@${corner}`));
const letters = fc.uniqueArray(letter, { minLength: 1, maxLength: 3 }).map((all) => all.join(" "));
const note = fc.constantFrom(
  "",
  "",
  " / wide",
  " / =1+1",
  " / 'so', \"then\"; + no time",
  " / counted as 1:23.4 · off",
);

/** A line as drivers type them: a time in any form, sectors alone or behind their time, remarks, a note. */
export const aLine: fc.Arbitrary<string> = fc
  .tuple(
    fc.oneof(
      times,
      fc.tuple(times, letters).map(([time, said]) => `${time} ${said}`),
      letters,
    ),
    note,
  )
  .map(([line, said]) => line + said);

/** Where lines are typed: what the simulator shows, and what a difference is measured from. */
export const aPlace: fc.Arbitrary<EntryContext> = fc
  .record({ displayDecimals: fc.constantFrom(1, 2, 3), relativeTo: fc.constantFrom("lap", "pb", "target") })
  .map((said) => aContext({ ...said, sectors: 3, targetMs: 82_345 }));

/** The laps that lines become when they are typed one after the other; a line that cannot be read becomes none. */
export function typedLaps(lines: readonly string[], place: EntryContext): StoredLap[] {
  let now = place;
  return lines.flatMap((line) => {
    const reading = parseEntry(line, now);
    if (!reading.ok) return [];
    const { lap } = reading;
    now = { ...now, previousMs: lap.ms, previousDecimals: lap.decimals };
    return {
      ...lap,
      source: sourceOf(reading),
      ...(isOdd(reading) && { isOdd: true as const }),
    };
  });
}
