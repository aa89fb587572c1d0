import { daysBetween, type Figure } from "#domain";
import type { LevelGain } from "#stats";
import { hundredths, sayAmount, tenths, towardsZero } from "./amount.ts";
import { certaintyOf } from "./certainty.ts";
import { counted } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { pace, sayBetween } from "./shift.ts";
import { sayDays } from "./trendSays.ts";

/**
 * How much faster the usual lap is than at the beginning of some days: the one sentence for it.
 * @example "Usual lap faster by 2.40 s in 12 weeks, very likely at least 2.1 s"
 * @example "Usual lap likely slower by 0.20 s in 5 weeks"
 * @example "Usual lap not clearly faster or slower in 5 weeks: it may be chance"
 */
export function gainTitle(gain: Figure<LevelGain>): string {
  if (!gain.known) return sayTooFew(gain.reason);
  const { change, low, high, from, to, chanceFaster } = gain.value;
  const span = sayDays(daysBetween(from, to));
  const certainty = certaintyOf(chanceFaster);
  const direction = change < 0 ? pace.fall : pace.rise;
  const size = sayAmount(change, hundredths);
  switch (certainty) {
    case "very likely": {
      const least = towardsZero(change < 0 ? high : low, tenths);
      const atLeast = least === 0 ? ", very likely" : `, very likely at least ${tenths.say(least)}`;
      return `Usual lap ${direction} by ${size} in ${span}${atLeast}`;
    }
    case "likely":
      return `Usual lap likely ${direction} by ${size} in ${span}`;
    case "may be chance":
      return `Usual lap not clearly ${pace.fall} or ${pace.rise} in ${span}: it may be chance`;
  }
}

/** What stands behind it: the sessions, and the interval. */
export function gainReading(gain: Figure<LevelGain>): string {
  if (!gain.known)
    return "Each session's usual lap is drawn; how far the level has moved needs more of them.";
  return `From ${counted(gain.value.sessions, "session")}, good and bad evenings evened out: ${sayBetween(gain.value, hundredths, pace)}.`;
}
