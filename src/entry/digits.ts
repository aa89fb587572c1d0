import { formatLapTime, type Reading } from "#domain";
import { quoted, refuse } from "./refuse.ts";
import { type Completion, completeShort, nearestTime } from "./shortForm.ts";
import { wholeTime } from "./wholeTime.ts";
import { longestMs, type ReadTime } from "./word.ts";

/** Digits of a time split by the decimals the simulator shows: 123456 is 1 min, 23 s and 456 ms. */
function parts(text: string, decimals: number) {
  const seconds = text.slice(0, -decimals);
  return {
    fraction: Number(text.slice(-decimals).padEnd(3, "0")),
    seconds: seconds.slice(-2),
    minutes: seconds.slice(-4, -2),
    hours: seconds.slice(-6, -4),
    isTooLong: seconds.length > 6,
    length: seconds.length,
  };
}

/**
 * Reads a time typed as digits only, with as many decimals as the simulator shows. From the minute's digit on it is
 * whole (123456, with two decimals 12345, with one 1234; hours 10203400). Less is the short form: the seconds' last
 * digit and three decimals (4912), or both digits of the seconds and the decimals (24912, with two decimals 2491).
 * Three digits and fewer are always refused, so with one decimal there is no short form without its point.
 */
export function readDigits(text: string, decimals: number, completion: Completion): Reading<ReadTime> {
  if (/^0+$/.test(text))
    return refuse(0, text.length, "A lap cannot take no time at all.", "Write its time, such as 123456.");
  if (text.length <= 3) return refuseFew(text, decimals, completion.nearMs);
  const { fraction, seconds, minutes, hours, isTooLong, length } = parts(text, decimals);
  if (isTooLong)
    return refuse(
      0,
      text.length,
      `${text.length} digits are more than a lap time has.`,
      "Write 123456 or 1:23.456.",
    );
  if (length >= 2 && Number(seconds) > 59) return refuseOver(text, "Seconds", seconds, decimals);
  if (minutes.length === 2 && hours !== "" && Number(minutes) > 59)
    return refuseOver(text, "Minutes", minutes, decimals);
  const ms = ((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1000 + fraction;
  if (length <= 2)
    return completeShort({ text, ms, decimals, leftOut: length === 1 ? "tens" : "minutes" }, completion);
  if (ms > longestMs)
    return refuse(0, text.length, `${quoted(text)} is over 24 hours.`, "Write a shorter time.");
  return { ok: true, ms, decimals, form: "digits" };
}

/** Digits too few to be clear; the examples are times that fit what is usual here. */
function refuseFew(text: string, decimals: number, nearMs: number | undefined) {
  const few =
    text.length === 1 ? "One digit alone is" : `${text.length === 2 ? "Two" : "Three"} digits alone are`;
  return refuse(
    0,
    text.length,
    `${few} not clear: laps a second apart could end like that.`,
    text.length === 3 && decimals > 1
      ? `Type the seconds' last digit too, such as ${shortAndWhole(text, decimals, nearMs).join(", or the whole time, such as ")}.`
      : `Write seconds with a point, such as ${text.length <= 2 ? `${text}.0` : `${text.slice(0, 2)}.${text.slice(2)}`}, or the whole time, such as ${nearMs === undefined ? "1:23.456" : formatLapTime(nearMs, decimals)}.`,
  );
}

/** A time that ends in the three digits, in its short form and whole. */
function shortAndWhole(text: string, decimals: number, nearMs = 84_499): readonly [string, string] {
  const fraction = Number(text.slice(-decimals).padEnd(3, "0"));
  const ms =
    decimals === 3
      ? Math.round((nearMs - fraction) / 1000) * 1000 + fraction
      : nearestTime({ ms: Number(text.charAt(0)) * 1000 + fraction, leftOut: "tens" }, nearMs);
  const whole = formatLapTime(Math.max(fraction, ms), decimals);
  return [decimals === 3 ? whole.replace(/\D/g, "").slice(-4) : `${text.charAt(0)}.${text.slice(1)}`, whole];
}

function refuseOver(text: string, unit: "Seconds" | "Minutes", value: string, decimals: number) {
  const before = text.slice(0, -decimals);
  const at = unit === "Seconds" ? before.length - 2 : before.length - 4;
  const inSeconds = `${before}.${text.slice(-decimals)}`;
  const ms = Number(before) * 1000 + Number(text.slice(-decimals).padEnd(3, "0"));
  return refuse(
    at,
    2,
    `${unit} go up to 59: ${value} is too many.`,
    before.length === 2
      ? `Write ${inSeconds} or ${wholeTime(ms, decimals)} if you mean ${before} seconds.`
      : "Write 1:23.456, for example.",
  );
}
