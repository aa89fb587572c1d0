import { daysBetween, type Figure } from "#domain";
import type { LevelGain } from "#stats";
import { awayFromZero, hundredths, towardsZero } from "./amount.ts";
import { certaintyOf } from "./certainty.ts";
import { type KnownOn, sayGainSpan } from "./gain.ts";
import { saySigned } from "./signed.ts";

/** A gain in its parts, for where a figure stands large and its certainty small beside it. */
export interface GainInShort {
  /** "−2.40 s"; "too few" where it is not known. */
  readonly figure: string;
  /** "very likely 2.02 to 2.52 s", "likely", "may be chance", "2 of 4 sessions" */
  readonly certainty: string;
  /** What it may be called: neither where it may be chance. */
  readonly way: "faster" | "slower" | "neither";
}

/** Days that sessions may begin late or end early in a time that is called by its whole length. */
const NEARLY = 14;

/** What the head of a column says of the time a gain is of. */
export interface GainColumn extends KnownOn {
  readonly days: number;
}

/**
 * How far the level has moved, in short; `gainTitle` says the same of the same figure.
 * @param column that it stands in; the time it really is of is said where that is far shorter
 */
export function gainInShort(gain: Figure<LevelGain>, column?: GainColumn): GainInShort {
  if (!gain.known) {
    const { reason } = gain;
    const has = "needs" in reason ? `${reason.has} of ${reason.needs} sessions` : "not known";
    return { figure: "too few", certainty: has, way: "neither" };
  }
  const { change, low, high, chanceFaster, from, to } = gain.value;
  const sure = certaintyOf(chanceFaster);
  const figure = saySigned(change, hundredths);
  const isShort = column !== undefined && daysBetween(from, to) < column.days - NEARLY;
  const span = isShort ? `, ${sayGainSpan(gain.value, column)}` : "";
  if (sure === "may be chance") return { figure, certainty: `${sure}${span}`, way: "neither" };
  const [near, far] = change < 0 ? [high, low] : [low, high];
  const range = `${hundredths.digits(towardsZero(near, hundredths))} to ${hundredths.say(awayFromZero(far, hundredths))}`;
  return {
    figure,
    certainty: `${sure === "very likely" ? `${sure} ${range}` : sure}${span}`,
    way: change < 0 ? "faster" : "slower",
  };
}
