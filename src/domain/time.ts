const minute = 60_000;
const hour = 3_600_000;

function checked(value: number, decimals: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`a time must be a finite number, not ${value}`);
  if (!(Number.isInteger(decimals) && decimals >= 0 && decimals <= 3))
    throw new RangeError(`a time has 0 to 3 decimals, not ${decimals}`);
  return value;
}

/** Nearest multiple of the last shown digit, halves away from zero. */
function rounded(ms: number, decimals: number): number {
  const unit = 10 ** (3 - decimals);
  return Math.sign(ms) * Math.round(Math.abs(ms) / unit) * unit;
}

/**
 * A lap time as it stands in the ledger: "1:23.456", under a minute "59.120", with hours "1:02:03.400".
 * Fewer decimals show fewer digits and never round up: a time known to tenths is "1:23.4" as typed.
 * @param ms milliseconds; a fraction of one (a median may have it) is rounded first
 * @param decimals 0 to 3
 * @throws RangeError when `ms` is not finite
 */
export function formatLapTime(ms: number, decimals = 3): string {
  const whole = Math.round(checked(ms, decimals));
  const size = Math.abs(whole);
  const two = (value: number) => String(value).padStart(2, "0");
  const hours = Math.floor(size / hour);
  const minutes = Math.floor((size % hour) / minute);
  const seconds = Math.floor((size % minute) / 1000);
  const fraction = String(size % 1000)
    .padStart(3, "0")
    .slice(0, decimals);
  const clock =
    hours > 0
      ? `${hours}:${two(minutes)}:${two(seconds)}`
      : minutes > 0
        ? `${minutes}:${two(seconds)}`
        : String(seconds);
  return `${whole < 0 ? "−" : ""}${clock}${decimals > 0 ? `.${fraction}` : ""}`;
}

/**
 * What `formatLapTime` shows of a time, ms: the digits behind its decimals are left out, never rounded.
 * @param decimals 0 to 3
 */
export function shownPart(ms: number, decimals: number): number {
  const unit = 10 ** (3 - decimals);
  return Math.floor(ms / unit) * unit;
}

/** The fewest decimals of a second that write all of a number of whole milliseconds, 0 to 3. */
export function decimalsOf(ms: number): number {
  return [0, 1, 2].find((decimals) => shownPart(ms, decimals) === ms) ?? 3;
}

/**
 * A difference of times, always signed: "−0.312", "+1.011", "±0.000"; from a minute on "+1:02.300". No unit.
 * Rounds to the nearest last digit; what rounds to nothing is "±".
 * @param ms milliseconds, negative = faster
 */
export function formatDelta(ms: number, decimals = 3): string {
  const value = rounded(checked(ms, decimals), decimals);
  const sign = value < 0 ? "−" : value > 0 ? "+" : "±";
  return sign + formatLapTime(Math.abs(value), decimals);
}

/** Which way a difference goes. */
export type Way = "faster" | "slower" | "the same";

/**
 * Which way a difference of times goes as `formatDelta` shows it: what rounds to ±0 goes neither way.
 * @example wayOf(-40, 1) // "the same"
 */
export function wayOf(ms: number, decimals = 3): Way {
  const value = rounded(checked(ms, decimals), decimals);
  return value < 0 ? "faster" : value > 0 ? "slower" : "the same";
}

/** A time as it is shown: to how many decimals it is known, 3 where nothing is said. */
export interface ShownTime {
  readonly ms: number;
  readonly decimals?: number | undefined;
}

/**
 * The difference of two times as both are shown, ms: each is rounded to whole milliseconds first, so that whoever
 * subtracts one from the other on paper finds the same; to no more decimals than the coarser of them is known to.
 * @example differenceShown({ ms: 84154.5 }, { ms: 84014.5 }) // { ms: -140, decimals: 3 }
 * @example differenceShown({ ms: 84550 }, { ms: 98000, decimals: 1 }) // { ms: 13500, decimals: 1 }
 */
export function differenceShown(
  from: ShownTime,
  to: ShownTime,
): { readonly ms: number; readonly decimals: number } {
  const decimals = Math.min(from.decimals ?? 3, to.decimals ?? 3);
  const ms = Math.round(checked(to.ms, decimals)) - Math.round(checked(from.ms, decimals));
  return { ms: rounded(ms, decimals), decimals };
}

/** The difference of two times as both are shown, signed: "−0.140", "+13.5". No unit. */
export function formatDifference(from: ShownTime, to: ShownTime): string {
  const { ms, decimals } = differenceShown(from, to);
  return formatDelta(ms, decimals);
}

/** The digits alone of a length of time as `formatSeconds` writes it: "0.312", "3:06.815". */
export function secondsDigits(ms: number, decimals = 3): string {
  const value = rounded(checked(ms, decimals), decimals);
  if (Math.abs(value) >= minute) return formatLapTime(value, decimals);
  return `${value < 0 ? "−" : ""}${(Math.abs(value) / 1000).toFixed(decimals)}`;
}

/**
 * A length of time in seconds with its unit: "0.312 s", "−1.01 s"; from a minute on as every long time is, and without
 * one: "3:06.815". Rounds to the nearest last digit.
 */
export function formatSeconds(ms: number, decimals = 3): string {
  const isLong = Math.abs(rounded(ms, decimals)) >= minute;
  return `${secondsDigits(ms, decimals)}${isLong ? "" : " s"}`;
}

/**
 * A share as a percentage: 0.0037 is "0.37 %" with two decimals.
 * @param fraction 1 = 100 %
 * @param decimals 0 to 3
 */
export function formatPercent(fraction: number, decimals = 1): string {
  const digits = (Math.abs(checked(fraction, decimals)) * 100).toFixed(decimals);
  return `${fraction < 0 && Number(digits) > 0 ? "−" : ""}${digits} %`;
}
