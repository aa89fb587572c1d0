import type { Unit } from "./amount.ts";

/**
 * A value with its sign, rounded to the nearest last digit.
 * @example saySigned(-212, thousandths) // "−0.212 s"
 */
export function saySigned(value: number, unit: Unit): string {
  const size = Math.round(Math.abs(value) / unit.step) * unit.step;
  const sign = size === 0 ? "±" : value < 0 ? "−" : "+";
  return `${sign}${unit.say(size)}`;
}
