import { formatSeconds, secondsDigits } from "#domain";

/** A unit in which differences are told: its last digit, the digits alone, and the digits with the unit's sign. */
export interface Unit {
  readonly step: number;
  readonly digits: (size: number) => string;
  readonly say: (size: number) => string;
}

function aUnit(step: number, divisor: number, decimals: number, sign: string): Unit {
  const digits = (size: number) => ((Math.round(size / step) * step) / divisor).toFixed(decimals);
  return { step, digits, say: (size) => `${digits(size)} ${sign}` };
}

/** Milliseconds told in seconds, as every length of time is; long ones without the seconds' sign. */
function secondsTo(decimals: number): Unit {
  return {
    step: 10 ** (3 - decimals),
    digits: (size) => secondsDigits(size, decimals),
    say: (size) => formatSeconds(size, decimals),
  };
}

/** Differences of usual laps and scatters: ms told in hundredths of a second. */
export const hundredths = secondsTo(2);
/** Differences of lap times, and what a lap adds: ms told in thousandths. */
export const thousandths = secondsTo(3);
/** Percent, in hundredths of one. */
export const percents = aUnit(0.01, 1, 2, "%");
/** Percent of a lap, in hundredths of one. */
export const percentsOfALap = aUnit(0.01, 1, 2, "% of a lap");
/** Percent of the laps, in tenths. */
export const percentPoints = aUnit(0.1, 1, 1, "points");
/** Mistakes a hundred laps, in tenths. */
export const per100Laps = aUnit(0.1, 1, 1, "in 100 laps");
/** Laps, in tenths of one. */
export const laps = aUnit(0.1, 1, 1, "laps");
/** Thousandths of a whole, told in percent. */
export const share = aUnit(1, 10, 1, "%");

/** Steps that floating point counts one too far are taken back. */
const SLACK = 1e-9;

/** The size of a value rounded to the nearest last digit; what is something, yet rounds to nothing, is "less than". */
export function sayAmount(value: number, unit: Unit): string {
  const size = Math.abs(value);
  const nearest = Math.round(size / unit.step) * unit.step;
  return nearest === 0 && size > 0 ? `less than ${unit.say(unit.step)}` : unit.say(nearest);
}

/** The value rounded towards zero: never more than it is. */
export function towardsZero(value: number, { step }: Unit): number {
  return Math.floor(Math.abs(value) / step + SLACK) * step;
}

/** The value rounded away from zero: never less than it is. */
export function awayFromZero(value: number, { step }: Unit): number {
  return Math.ceil(Math.abs(value) / step - SLACK) * step;
}
