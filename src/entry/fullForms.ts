import { formatLapTime, type Reading } from "#domain";
import { quoted, refuse } from "./refuse.ts";
import { longestMs, type ReadTime } from "./word.ts";

type Part = "hours" | "minutes" | "seconds" | "fraction";

/** 1:23.456 · 1:23 · 1:02:03.4 — 1'23"456 · 1'23.4 · 1'23" — 1.23.456 — 83.456 */
const shapes = [
  /^(?:(?<hours>\d+):)?(?<minutes>\d+):(?<seconds>\d+)(?:[.,](?<fraction>\d+))?$/d,
  /^(?<minutes>\d+)'(?<seconds>\d+)(?:[".,](?<fraction>\d+)|")?$/d,
  /^(?<minutes>\d+)\.(?<seconds>\d+)\.(?<fraction>\d+)$/d,
  /^(?<seconds>\d+)[.,](?<fraction>\d+)$/d,
];

/**
 * Reads a time written in full. A word of another shape gives `undefined`; one of the right shape with a wrong value
 * in it is refused, never carried over (1:75 is not 2:15) and never cut (1:23.4567).
 */
export function readFullForm(text: string): Reading<ReadTime> | undefined {
  for (const shape of shapes) {
    const match = shape.exec(text);
    if (match !== null) return new FullForm(match).read();
  }
  return undefined;
}

class FullForm {
  readonly #match: RegExpExecArray;

  constructor(match: RegExpExecArray) {
    this.#match = match;
  }

  #digits(part: Part): string | undefined {
    return this.#match.groups?.[part];
  }

  #value(part: Part): number {
    return Number(this.#digits(part) ?? "0");
  }

  #refuse(part: Part, wrong: string, right: string) {
    const [from, to] = this.#match.indices?.groups?.[part] ?? [0, this.#match[0].length];
    return refuse(from, to - from, wrong, right);
  }

  read(): Reading<ReadTime> {
    const fraction = this.#digits("fraction") ?? "";
    const decimals = fraction.length;
    const wrongPart = this.#wrongPart(fraction);
    if (wrongPart !== undefined) return wrongPart;
    const ms =
      ((this.#value("hours") * 60 + this.#value("minutes")) * 60 + this.#value("seconds")) * 1000 +
      Number(fraction.padEnd(3, "0"));
    const all = this.#match[0];
    if (ms === 0)
      return refuse(0, all.length, "A lap cannot take no time at all.", "Write its time, such as 1:23.456.");
    if (ms > longestMs)
      return refuse(
        0,
        all.length,
        `${quoted(all)} is over 24 hours.`,
        "Write a time up to 24 hours, such as 1:23.456.",
      );
    return { ok: true, ms, decimals, form: "full" };
  }

  #wrongPart(fraction: string) {
    const hours = this.#digits("hours");
    const minutes = this.#digits("minutes");
    const seconds = this.#digits("seconds") ?? "";
    const tail = fraction === "" ? "" : `.${fraction.slice(0, 3)}`;
    if (fraction.length > 3)
      return this.#refuse(
        "fraction",
        `A time has up to three decimals: ${quoted(fraction)} has ${fraction.length}.`,
        `Write ${this.#match[0].slice(0, this.#match[0].length - fraction.length)}${fraction.slice(0, 3)} if you mean thousandths.`,
      );
    if (hours !== undefined && hours.length > 2)
      return this.#refuse(
        "hours",
        `Hours have up to two digits, not ${quoted(hours)}.`,
        "Write 1:02:03.4 for an hour, 2 min and 3.4 s.",
      );
    if (minutes === undefined) return this.#wrongPlainSeconds(seconds, tail);
    const before = hours === undefined ? "" : `${hours}:`;
    if (hours !== undefined && (minutes.length !== 2 || Number(minutes) > 59))
      return this.#refuse(
        "minutes",
        `After hours, minutes have two digits and go up to 59: ${quoted(minutes)} does not fit.`,
        `Write ${hours}:${minutes.length === 1 ? `0${minutes}` : "59"}:${seconds.padStart(2, "0").slice(0, 2)}${tail}, for example.`,
      );
    if (hours === undefined && minutes.length > (minutes.startsWith("0") ? 2 : 4))
      return this.#refuse(
        "minutes",
        `Minutes have up to four digits, not ${quoted(minutes)}.`,
        "Write 1:23.456, for example.",
      );
    if (seconds.length !== 2) {
      const isFraction = hours !== undefined && fraction === "" && seconds.length <= 3;
      return this.#refuse(
        "seconds",
        `Seconds after minutes have two digits: ${quoted(seconds)} has ${seconds.length}.`,
        isFraction
          ? `Write ${hours}:${minutes}.${seconds}, with a point before the part of a second.`
          : `Write ${before}${minutes}:${seconds.padStart(2, "0").slice(0, 2)}${tail}.`,
      );
    }
    if (Number(seconds) > 59) {
      const carried = ((this.#value("hours") * 60 + Number(minutes)) * 60 + Number(seconds)) * 1000;
      return this.#refuse(
        "seconds",
        `Seconds go up to 59: ${seconds} is too many.`,
        `Write ${formatLapTime(carried + Number(fraction.padEnd(3, "0")), fraction.length)} if you mean ${minutes} min and ${seconds} s.`,
      );
    }
    return undefined;
  }

  #wrongPlainSeconds(seconds: string, tail: string) {
    if (seconds.length <= 2 || (seconds.length <= 6 && !seconds.startsWith("0"))) return undefined;
    const plain = seconds.replace(/^0+(?=\d)/, "");
    return this.#refuse(
      "seconds",
      seconds.startsWith("0")
        ? `${quoted(seconds)} begins with a nought too many.`
        : "That is more seconds than 24 hours have.",
      `Write ${plain.length <= 6 ? `${plain}${tail}` : "83.456"}, for example.`,
    );
  }
}

/** Whether the word is seconds of under a minute with decimals, so that a minute may have been left out. */
export function isPlainSeconds(text: string): boolean {
  return /^[0-5]?\d[.,]\d{1,3}$/.test(text);
}
