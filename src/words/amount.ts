import { formatSeconds } from "#domain";

/** A unit in which differences are told: its last digit, and the digits with the unit's sign. */
export interface Unit {
  readonly step: number;
  readonly say: (size: number) => string;
}

/** Differences of usual laps and scatters: ms told in hundredths of a second. */
export const hundredths: Unit = { step: 10, say: (ms) => formatSeconds(ms, 2) };
/** Differences of lap times, and what a lap adds: ms told in thousandths. */
export const thousandths: Unit = { step: 1, say: (ms) => formatSeconds(ms) };
/** Percent, in hundredths of one. */
export const percents: Unit = { step: 0.01, say: (percent) => `${percent.toFixed(2)} %` };

/** Steps that floating point counts one too far are taken back. */
const SLACK = 1e-9;

/** The size of a value rounded to the nearest last digit; what is something, yet rounds to nothing, is "less than". */
export function sayAmount(value: number, unit: Unit): string {
  const size = Math.abs(value);
  const nearest = Math.round(size / unit.step) * unit.step;
  return nearest === 0 && size > 0 ? `less than ${unit.say(unit.step)}` : unit.say(nearest);
}

/** The value rounded towards zero: surely not more than it is. */
export function towardsZero(value: number, { step }: Unit): number {
  return Math.floor(Math.abs(value) / step + SLACK) * step;
}

/** The value rounded away from zero: surely not less than it is. */
export function awayFromZero(value: number, { step }: Unit): number {
  return Math.ceil(Math.abs(value) / step - SLACK) * step;
}
