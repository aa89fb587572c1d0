import { type CalendarDate, daysBetween, type Figure, sayShortDate } from "#domain";
import type { LevelGain } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import { certaintyOf } from "./certainty.ts";
import { counted } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { pace, sayAtLeast, sayBetween } from "./shift.ts";
import { sayDays } from "./trendSays.ts";

/** The last day a finding knows of, and the day it is read on: the same where a period has no end yet. */
export interface KnownOn {
  readonly asOf: CalendarDate;
  readonly today: CalendarDate;
}

/**
 * The time a gain is of, so that two of them are never taken for one.
 * @example "since 8 Sep", of a time that is over "in the 12 weeks to 22 Nov"
 */
export function sayGainSpan({ from }: Pick<LevelGain, "from">, { asOf, today }: KnownOn): string {
  if (asOf >= today) return `since ${sayShortDate(from, today)}`;
  return `in the ${sayDays(daysBetween(from, asOf) + 1)} to ${sayShortDate(asOf, today)}`;
}

/**
 * How much faster the usual lap is than at the beginning of some days: the one sentence for it.
 * @example "Usual lap faster by 2.40 s since 31 Aug, very likely at least 2.13 s"
 * @example "Usual lap likely slower by 0.20 s in the 5 weeks to 22 Nov"
 * @example "Usual lap not clearly faster or slower since 18 Oct: it may be chance"
 */
export function gainTitle(gain: Figure<LevelGain>, on: KnownOn): string {
  if (!gain.known) return sayTooFew(gain.reason);
  const { change, chanceFaster } = gain.value;
  const span = sayGainSpan(gain.value, on);
  const certainty = certaintyOf(chanceFaster);
  const direction = change < 0 ? pace.fall : pace.rise;
  const size = sayAmount(change, hundredths);
  switch (certainty) {
    case "very likely":
      return `Usual lap ${direction} by ${size} ${span}, ${sayAtLeast(gain.value, hundredths)}`;
    case "likely":
      return `Usual lap likely ${direction} by ${size} ${span}`;
    case "may be chance":
      return `Usual lap not clearly ${pace.fall} or ${pace.rise} ${span}: it may be chance`;
  }
}

/** What stands behind it: the sessions, and the interval. */
export function gainReading(gain: Figure<LevelGain>): string {
  if (!gain.known)
    return "Each session's usual lap is drawn; how far the level has moved needs more of them.";
  return `From ${counted(gain.value.sessions, "session")}, good and bad evenings evened out: ${sayBetween(gain.value, hundredths, pace)}.`;
}
