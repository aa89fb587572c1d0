import type { Figure } from "#domain";
import type { LevelGain } from "#stats";
import { awayFromZero, hundredths, tenths, towardsZero } from "./amount.ts";
import { certaintyOf } from "./certainty.ts";
import { saySigned } from "./signed.ts";

/** A gain in its parts, for where a figure stands large and its certainty small beside it. */
export interface GainInShort {
  /** "−2.40 s"; "too few" where it is not known. */
  readonly figure: string;
  /** "very likely 2.0 to 2.5 s", "likely", "may be chance", "2 of 4 sessions" */
  readonly certainty: string;
  /** What it may be called: neither where it may be chance. */
  readonly way: "faster" | "slower" | "neither";
}

/** How far the level has moved, in short; `sayGain` and `gainTitle` say the same of the same figure. */
export function gainInShort(gain: Figure<LevelGain>): GainInShort {
  if (!gain.known) {
    const { reason } = gain;
    const has = "needs" in reason ? `${reason.has} of ${reason.needs} sessions` : "not known";
    return { figure: "too few", certainty: has, way: "neither" };
  }
  const { change, low, high, chanceFaster } = gain.value;
  const sure = certaintyOf(chanceFaster);
  const figure = saySigned(change, hundredths);
  if (sure === "may be chance") return { figure, certainty: sure, way: "neither" };
  const [near, far] = change < 0 ? [high, low] : [low, high];
  const range = `${tenths.digits(towardsZero(near, tenths))} to ${tenths.say(awayFromZero(far, tenths))}`;
  return {
    figure,
    certainty: sure === "very likely" ? `${sure} ${range}` : sure,
    way: change < 0 ? "faster" : "slower",
  };
}
