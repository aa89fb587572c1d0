import type { Reason } from "#domain";
import { type GainRange, mostPointsUp, type ShareRange, usualSliderEnd } from "#physics";
import { asSentence } from "./counted.ts";
import { sayReason } from "./reason.ts";

/** What floating point takes off is given back: 0.5 · 60 stays 30. */
const SLACK = 1e-9;
/** Least share of time, in percent, that is told as a figure. */
const LEAST_SHARE = 0.1;
/** Standard gravity, m/s² (3rd CGPM). */
const GRAVITY = 9.80665;

/**
 * A gain in whole percent, below ten in tenths, never more than was worked out.
 * @example gainDigits(56.25) // "56"
 */
export function gainDigits(gain: number): string {
  const perUnit = gain < 10 ? 10 : 1;
  return String(Math.floor(gain * perUnit + SLACK) / perUnit);
}

/**
 * The gain worked out, one figure or a range.
 * @example sayGain({ low: 39.03, high: 45.65 }) // "39 to 45 %"
 */
export function sayGain({ low, high }: GainRange): string {
  const [least, most] = [gainDigits(low), gainDigits(high)];
  return least === most ? `${most} %` : `${least} to ${most} %`;
}

/** Why no gain can be worked out, and what to do instead. */
export function sayNoGain(reason: Reason): string {
  if ("needs" in reason) return `${asSentence(sayReason(reason))}.`;
  if (reason.because === "peak cut off")
    return "At 100 % and more the strongest force is cut off, so how strong it really was cannot be seen. Look how long the force is at the limit instead.";
  if (reason.because === "not above zero" && reason.measure === "gain")
    return "At a gain of 0 % no force is felt: there is nothing to work out. Drive a few laps with some gain, and look how strong the force gets.";
  if (reason.because !== "out of range") return `${asSentence(sayReason(reason))}.`;
  if (reason.measure === "reserve") return "The reserve must be 0 % or more, and under 100 %.";
  if (reason.measure === "wanted share") return "The wanted share must be more than 0 % and under 30 %.";
  return reason.value <= 0
    ? "A force that is never at the limit tells nothing by its share. Use the strongest force you saw instead."
    : "From 30 % of the time at the limit on, too little of the force is seen to work anything out. Turn the gain down by a third, drive a few laps and look again.";
}

/** What is still to be typed, by the first figure that is missing. */
export const wantedForGain = {
  gain: "Type the gain you drive with now, and what you saw.",
  peak: "Drive a few laps, watch how strong the force gets, and type the strongest you saw.",
  reserve: "Type the reserve: how much is kept free under the limit. 10 % is common practice, no source.",
  share: "Drive a few laps, watch how long the force is at the limit, and type its share of the time.",
  wanted: "Type how long it is wanted at the limit. 1 % of the time is common practice, no source.",
} as const;

/** Nothing is worked out while a figure that it needs cannot be read. */
export function sayMendFirst(name: string): string {
  return `Put right what stands at “${name}”.`;
}

/**
 * Why it is a range, and how to go about it.
 * @param first gain to begin with, in percent as digits; isUp where that is more than the gain now
 */
export function whyGainIsARange(first: string, isUp: boolean): string {
  return `A range, because what lies over the limit cannot be seen. It holds where strong forces get rarer as they mostly do; with rare hard knocks the right gain lies outside it. Begin at ${first} %, look again how long the force is at the limit, and go on in small steps${isUp ? `, at most ${mostPointsUp} points at a time` : ""}.`;
}

/**
 * How to go about a gain that is more than the gain now.
 * @param first gain to begin with, in percent as digits
 */
export function sayStepUp(first: string): string {
  return `Go up at most ${mostPointsUp} points at a time: begin at ${first} %, and feel how strong it is before you go on.`;
}

/**
 * A gain that was held down to where sliders end.
 * @param worked what the sum gives
 */
export function sayHeldGain(worked: GainRange): string {
  return `By the sum it would be ${sayGain(worked)}. Most sliders end at ${usualSliderEnd} % (common practice, no source): this wheel's own strength is the limit then.`;
}

/**
 * Headroom in plain words.
 * @example sayHeadroom(1.938) // "a force up to 25 % stronger still comes through"
 */
export function sayHeadroom(decibels: number): string {
  const more = Math.floor((10 ** (decibels / 20) - 1) * 100 + SLACK);
  return more < 1 ? "nothing stronger comes through" : `a force up to ${more} % stronger still comes through`;
}

/** Decibels in tenths, with a true minus. */
export function sayDecibels(decibels: number): string {
  const tenths = Math.round(decibels * 10) / 10;
  return `${tenths < 0 ? "−" : ""}${Math.abs(tenths).toFixed(1)} dB`;
}

/**
 * Force at the hands, and what weighs as much.
 * @example sayRimForce(51.4) // "51 N at the hands, as heavy as 5.2 kg"
 */
export function sayRimForce(newtons: number): string {
  const kg = newtons / GRAVITY;
  return `${newtons.toFixed(newtons < 10 ? 1 : 0)} N at the hands, as heavy as ${kg.toFixed(kg < 10 ? 1 : 0)} kg`;
}

/** A gain in words, and the share of the drawn turn that lies over the limit at it. */
export interface TurnAtGain {
  readonly gain: string;
  readonly share: number;
  /** Time at the limit that is typical there, where that was worked out. */
  readonly time?: ShareRange;
}

/**
 * A typical share of time at the limit, one figure or a range.
 * @example sayTimeAtLimit({ low: 0.009, high: 0.0166 }) // "about 0.9 to 2 % of the time"
 */
export function sayTimeAtLimit({ low, high }: ShareRange): string {
  const [least, most] = [percentDigits(low), percentDigits(high)];
  if (Number(most) < LEAST_SHARE) return `less than ${LEAST_SHARE} % of the time`;
  if (Number(least) < LEAST_SHARE) return `up to ${most} % of the time`;
  return `about ${least === most ? most : `${least} to ${most}`} % of the time`;
}

/** Whole percent from ten on, below that the first digit that is no nought. */
function percentDigits(share: number): string {
  const percent = share * 100;
  return percent < 10 ? String(Number(percent.toPrecision(1))) : percent.toFixed(0);
}

/**
 * What the limit does to the drawn turn at one gain.
 * @example waveSays({ gain: "72 %", share: 0.05 }) // "At 72 % what lies over the limit is cut off: bumps in the middle …"
 */
export function waveSays({ gain, share }: TurnAtGain): string {
  return share === 0
    ? `At ${gain} all of it comes through, the bumps in the middle of a turn too.`
    : `At ${gain} what lies over the limit is cut off: bumps in the middle of a turn vanish, and the wheel stays as heavy however hard the tyres work.`;
}

/**
 * The same of two gains beside each other; what is true of both is said once.
 * @example waveCompares({ gain: "50 %", share: 0 }, { gain: "56 %", share: 0 }) // "At 50 % and 56 % all of it comes through, …"
 */
export function waveCompares(now: TurnAtGain, next: TurnAtGain): readonly string[] {
  if (now.share === 0 && next.share === 0)
    return [waveSays({ gain: `${now.gain} and ${next.gain}`, share: 0 })];
  if (now.share === 0 || next.share === 0) return [waveSays(now), waveSays(next)];
  const less = next.share < now.share ? "less" : next.share > now.share ? "more" : "as much";
  const time = next.time === undefined ? "" : `, ${sayTimeAtLimit(next.time)}`;
  return [waveSays(now), `At ${next.gain} ${less} of it is cut off${time}.`];
}

/** What the picture is, and what it is not. */
export const waveIsASketch =
  "A sketch of the principle, not your own force: only how much of it lies over the limit follows from what you typed.";

/** A gain that is not the one worked out, or far up from the gain now, in words; undefined where it is neither. */
export function sayGainChosen(chosen: number, now: number, { low, high }: GainRange): string | undefined {
  const [least, most] = [Number(gainDigits(low)), Number(gainDigits(high))];
  const said: string[] = [];
  if (chosen < least || chosen > Math.max(most, high)) {
    const isOnTheWay = chosen > Math.min(now, least) && chosen < Math.max(now, most);
    said.push(
      isOnTheWay
        ? `A step on the way from ${now} % to what was worked out: ${sayGain({ low, high })}.`
        : `Worked out: ${sayGain({ low, high })}. It is stored as typed.`,
    );
  }
  const up = chosen - now;
  if (up > mostPointsUp + SLACK)
    said.push(`It is ${Number(up.toFixed(1))} points up at once: smaller steps are safer for your hands.`);
  return said.length === 0 ? undefined : said.join(" ");
}

/** The record in force has another gain than the one at which the force was seen. */
export function sayOtherInForce(gain: number): string {
  return `The record in force says ${gain} %. What you saw counts for the gain that stands here.`;
}
