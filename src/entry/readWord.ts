import type { Reading } from "#domain";
import { readDigits } from "./digits.ts";
import { isPlainSeconds, readFullForm } from "./fullForms.ts";
import { quoted, refuse } from "./refuse.ts";
import { refuseOutside } from "./refuseOutside.ts";
import { type Base, type BaseName, readRelative } from "./relative.ts";
import { type Completion, completeShort } from "./shortForm.ts";
import type { ReadTime } from "./word.ts";

/** All that is known when one time is read. */
export interface WordOptions extends Completion {
  readonly displayDecimals: number;
  readonly base?: Base | undefined;
  readonly baseName: BaseName;
}

/** Reads one folded word as a lap time in any of its forms. */
export function readWord(text: string, options: WordOptions): Reading<ReadTime> {
  const read = readForm(text, options);
  return read.ok ? (refuseOutside(read.ms, text) ?? read) : read;
}

function readForm(text: string, options: WordOptions): Reading<ReadTime> {
  if (/^[+-]/.test(text)) return readRelative(text, options.base, options.baseName);
  if (/^\d+$/.test(text)) return readDigits(text, options.displayDecimals, options);
  const full = readFullForm(text);
  if (full === undefined) return refuseShape(text);
  // Seconds alone may lack their minute; with no usual lap to complete them from they stand as they are.
  if (!isPlainSeconds(text) || options.nearMs === undefined) return full;
  const [seconds = "", fraction = ""] = text.split(/[.,]/);
  const ms = Number(seconds) * 1000 + Number(fraction.padEnd(3, "0"));
  const leftOut = seconds.length === 1 ? "tens" : "minutes";
  return completeShort({ text, ms, decimals: fraction.length, leftOut }, options);
}

/** Says what is the matter with a word that has the shape of no time. */
export function refuseShape(text: string) {
  const letter = /[a-z@/ ]/.exec(text);
  if (letter !== null)
    return refuse(
      letter.index,
      1,
      `${quoted(letter[0])} does not belong in a time.`,
      `Write ${example(text)}.`,
    );
  if ((text.match(/,/g) ?? []).length > 1 || /\..*,/.test(text))
    return refuse(
      text.indexOf(","),
      1,
      "A comma is read as a decimal mark, so it cannot stand between times.",
      `Separate sectors by spaces: ${sectorsOf(text)}.`,
    );
  const doubled = /[:.,'"+-]{2,}/.exec(text);
  if (doubled !== null)
    return refuse(
      doubled.index,
      doubled[0].length,
      `${quoted(doubled[0])} stands where one sign belongs.`,
      `Write ${example(text)}.`,
    );
  const end = /[:.,'"+-]$/.exec(text);
  if (end !== null && text.length > 1)
    return refuse(text.length, 0, `After ${quoted(text)} digits are missing.`, `Write ${example(text)}.`);
  if (/^[:.,'"]/.test(text))
    return refuse(0, 0, `Before ${quoted(text)} digits are missing.`, `Write ${example(text)}.`);
  return refuse(0, text.length, `${quoted(text)} has the shape of no lap time.`, `Write ${example(text)}.`);
}

/** The word put right in the plainest ways, where that makes a time; else a time of nearly the same digits. */
function example(text: string): string {
  const plain = text
    .replace(/^[a-z ]+|[a-z ]+$/g, "")
    .replace(/([:.,'"+-])[:.,'"+-]+/g, "$1")
    .replace(/,/g, ".")
    .replace(/[:.'"+-]$/, "");
  const minutesAlone = /\d[:']$/.test(text) ? [`${plain}:23.456`] : [];
  const tries = [...minutesAlone, plain, `0${plain}`, `${plain}.0`];
  const found = tries.find((candidate) => candidate.length <= 15 && readFullForm(candidate)?.ok === true);
  return found ?? "1:23.456, for example";
}

function sectorsOf(text: string): string {
  const list = /\..*,/.test(text) ? text.split(",") : (text.match(/\d+,\d+|\d+/g) ?? []);
  const words = list.filter((word) => readFullForm(word)?.ok === true);
  return words.length >= 2 && words.length === list.length && text.length <= 60
    ? words.join(" ")
    : "27.1 31.42 24.9";
}
