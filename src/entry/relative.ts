import { formatLapTime, type Reading } from "#domain";
import { readFullForm } from "./fullForms.ts";
import { quoted, refuse, shifted } from "./refuse.ts";
import type { ReadTime } from "./word.ts";

/** What a signed entry is measured from. */
export interface Base {
  readonly ms: number;
  readonly decimals: number;
}

/** What the base is called in sentences. */
export type BaseName = "the lap before" | "your PB" | "the target";

const shape = /^([+-])(\d+)(?:[.,](\d+))?$/;

/**
 * Reads "+0.6", "-0.25" or "+1:02.300": seconds, or minutes and seconds, added to or taken from the lap before, the PB or the target. The lap is known to
 * the fewer of both numbers of decimals. Refused without a base and where nothing or less would be left.
 */
export function readRelative(text: string, base: Base | undefined, name: BaseName): Reading<ReadTime> {
  if (text.includes(":")) return readMinutes(text, base, name);
  const match = shape.exec(text);
  if (match === null)
    return refuse(
      0,
      text.length,
      `${quoted(text)} is not a difference in seconds.`,
      "Write +0.6 or -0.25, for example.",
    );
  const [, sign = "", seconds = "", fraction = ""] = match;
  if (fraction.length > 3)
    return refuse(
      text.length - fraction.length,
      fraction.length,
      `A difference has up to three decimals: ${quoted(fraction)} has ${fraction.length}.`,
      `Write ${sign}${seconds}.${fraction.slice(0, 3)} if you mean thousandths.`,
    );
  if (fraction === "" && seconds.length > 2)
    return refuse(
      0,
      text.length,
      `${quoted(text)} would be ${seconds.length > 6 ? "very many" : Number(seconds)} seconds.`,
      `Write ${sign}0.${seconds.slice(0, 3)} if you mean a part of a second, or ${sign}${seconds.slice(0, 4)}.0.`,
    );
  if (seconds.length > 4)
    return refuse(
      1,
      seconds.length,
      "A difference has up to four digits before its point.",
      "Write the whole time instead, such as 1:23.456.",
    );
  const size = Number(seconds) * 1000 + Number(fraction.padEnd(3, "0"));
  return measured(text, { size, decimals: fraction.length }, base, name);
}

/** A difference from a minute on, as it is printed. */
function readMinutes(text: string, base: Base | undefined, name: BaseName): Reading<ReadTime> {
  const read = readFullForm(text.slice(1));
  if (read === undefined)
    return refuse(
      0,
      text.length,
      `${quoted(text)} is not a difference.`,
      "Write +0.6 or +1:02.3, for example.",
    );
  if (!read.ok) return { ok: false, problem: shifted(read.problem, 1) };
  return measured(text, { size: read.ms, decimals: read.decimals }, base, name);
}

function measured(
  text: string,
  { size, decimals }: { readonly size: number; readonly decimals: number },
  base: Base | undefined,
  name: BaseName,
): Reading<ReadTime> {
  if (base === undefined) return refuseWithoutBase(text, name);
  const ms = Math.round(base.ms) + (text.startsWith("-") ? -size : size);
  if (ms <= 0)
    return refuse(
      0,
      text.length,
      `${quoted(text)} from ${name}, ${formatLapTime(base.ms, base.decimals)}, would leave no time.`,
      "Write a smaller difference or the whole time.",
    );
  return { ok: true, ms, decimals: Math.min(base.decimals, decimals), form: "relative" };
}

function refuseWithoutBase(text: string, name: BaseName) {
  const wrong =
    name === "the lap before"
      ? "There is no time before this one to measure from."
      : `There is no ${name === "your PB" ? "PB" : "target time"} yet to measure from.`;
  return refuse(0, text.length, wrong, `Write the whole time instead of ${quoted(text)}, such as 1:23.456.`);
}
