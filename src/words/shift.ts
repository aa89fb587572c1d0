import { awayFromZero, sayAmount, towardsZero, type Unit } from "./amount.ts";

/** A change with its interval; a fall is negative. */
export interface Shift {
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
}

/** What a fall and a rise are called: faster and slower. */
export interface Directions {
  readonly fall: string;
  readonly rise: string;
}

export const pace: Directions = { fall: "faster", rise: "slower" };

/** Whether the interval leaves out zero. */
export function isClear({ low, high }: Pick<Shift, "low" | "high">): boolean {
  return low > 0 || high < 0;
}

/** Whether nothing differed at all, so that there is nothing that chance could have done. */
export function isSame({ low, high }: Pick<Shift, "low" | "high">): boolean {
  return low === 0 && high === 0;
}

/**
 * Both ends of an interval in words, rounded outwards, so that what lies outside is ruled out.
 * @example sayBetween({ low: -96, high: 301 }, hundredths, pace) // "between 0.10 s faster and 0.31 s slower"
 * @example sayBetween({ low: 20, high: 301 }, hundredths, pace) // "between 0.02 and 0.31 s slower"
 */
export function sayBetween(
  { low, high }: Pick<Shift, "low" | "high">,
  unit: Unit,
  { fall, rise }: Directions,
): string {
  if (isSame({ low, high })) return "no difference";
  if (low >= 0) return oneSide(low, high, unit, rise);
  if (high <= 0) return oneSide(high, low, unit, fall);
  return `between ${unit.say(awayFromZero(low, unit))} ${fall} and ${unit.say(awayFromZero(high, unit))} ${rise}`;
}

function oneSide(near: number, far: number, unit: Unit, direction: string): string {
  const [least, most] = [towardsZero(near, unit), unit.say(awayFromZero(far, unit))];
  return `${least === 0 ? "up to" : `between ${unit.digits(least)} and`} ${most} ${direction}`;
}

/**
 * How much at least a clear change is: the near end of its 90 % interval, rounded towards zero.
 * @example sayAtLeast({ low: -430, high: -52 }, hundredths) // "very likely at least 0.05 s"
 */
export function sayAtLeast({ low, high }: Pick<Shift, "low" | "high">, unit: Unit): string {
  const least = towardsZero(low > 0 ? low : high, unit);
  return least === 0 ? "very likely" : `very likely at least ${unit.say(least)}`;
}

/**
 * A change whose interval holds zero, in words; what it rules out is said beside it by `sayBetween`.
 * @example sayNotClear(pace, " than run 2") // "not clearly faster or slower than run 2"
 */
export function sayNotClear({ fall, rise }: Directions, beside = ""): string {
  return `not clearly ${fall} or ${rise}${beside}`;
}

/**
 * A clear change in words.
 * @example sayClear({ estimate: -240, low: -430, high: -52 }, hundredths, pace)
 * // "faster by 0.24 s, very likely at least 0.05 s"
 */
export function sayClear(shift: Shift, unit: Unit, words: Directions, beside = ""): string {
  const direction = shift.low > 0 ? words.rise : words.fall;
  return `${direction} by ${sayAmount(shift.estimate, unit)}${beside}, ${sayAtLeast(shift, unit)}`;
}
