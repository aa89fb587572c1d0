import { aboutRemark, type Reading, type Remark, remarkKinds } from "#domain";
import { quoted, refuse } from "./refuse.ts";
import { withRemark } from "./unitOrSpin.ts";
import type { Word } from "./word.ts";

/** The entry line before its note, taken apart. */
export interface EntryParts {
  readonly times: readonly Word[];
  readonly remarks: readonly Remark[];
}

const letters = remarkKinds.map(({ letter, word }) => `${letter} ${word}`).join(", ");
const off = aboutRemark("off");
const timeSigns = /[0-9:.,'"+-]+/y;
const remarkSigns = /([a-z])(?:@(\d+))?/y;
const writtenOut = /[a-z]+/y;

/**
 * Takes folded text apart into times and remarks: times first, separated by spaces, then letters, each of which may
 * name a corner (f@5), together or apart, with or without a space after the time.
 * @param corners number of the layout's corners, where known
 */
export function splitEntry(text: string, corners: number | undefined): Reading<EntryParts> {
  const times: Word[] = [];
  const remarks: Remark[] = [];
  let at = 0;
  while (at < text.length) {
    const sign = text.charAt(at);
    if (sign === " ") {
      at += 1;
    } else if (/[a-z@]/.test(sign)) {
      const word = refuseWrittenOut(text, at);
      if (word !== undefined) return word;
      const one = readRemark(text, at, corners);
      if (!one.ok) return one;
      if (remarks.some((other) => other.kind === one.remark.kind && other.corner === one.remark.corner))
        return refuse(
          at,
          one.end - at,
          `${quoted(text.slice(at, one.end))} is there twice.`,
          `Each remark stands once: ${letters}.`,
        );
      remarks.push(one.remark);
      at = one.end;
    } else {
      const word = wordAt(text, at);
      if (remarks.length > 0) return refuseTimeAfterRemark(text, at, word);
      times.push({ text: word, start: at });
      at += word.length;
    }
  }
  return { ok: true, times, remarks };
}

function wordAt(text: string, at: number): string {
  timeSigns.lastIndex = at;
  return timeSigns.exec(text)?.[0] ?? text.charAt(at);
}

/** A remark as a word. None of the words is a line of letters that could be meant one by one. */
function refuseWrittenOut(text: string, at: number) {
  if (/[a-z]/.test(text.charAt(at - 1))) return undefined;
  writtenOut.lastIndex = at;
  const [typed = ""] = writtenOut.exec(text) ?? [];
  const about = remarkKinds.find(({ word }) => word.split(" ")[0] === typed);
  if (about === undefined) return undefined;
  const before = text.slice(0, at).trim();
  return refuse(
    at,
    typed.length,
    `Remarks are single letters, and ${quoted(typed)} is a word.`,
    `Write ${about.letter} for ${about.word}: ${withRemark(before, about.letter)}.`,
  );
}

function readRemark(
  text: string,
  at: number,
  corners: number | undefined,
): Reading<{ remark: Remark; end: number }> {
  remarkSigns.lastIndex = at;
  const match = remarkSigns.exec(text);
  if (match === null)
    return refuse(
      at,
      1,
      "A corner needs a remark before it.",
      `Write ${off.letter}@5 for ${off.word} at corner 5.`,
    );
  const [all, letter = "", digits] = match;
  const kind = remarkKinds.find((about) => about.letter === letter)?.kind;
  if (kind === undefined)
    return refuse(at, 1, `${quoted(letter)} is not a remark.`, `The letters are: ${letters}.`);
  const end = at + all.length;
  if (digits === undefined) {
    if (text.charAt(end) === "@")
      return refuse(
        end,
        1,
        `After ${quoted(`${letter}@`)} the number of the corner is missing.`,
        `Write ${letter}@5 for corner 5, or ${letter} alone.`,
      );
    return { ok: true, remark: { kind }, end };
  }
  const corner = Number(digits);
  const last = corners ?? 999;
  if (corner < 1 || corner > last)
    return refuse(
      end - digits.length,
      digits.length,
      corners === undefined
        ? `There is no corner ${shortNumber(digits)}.`
        : `This layout has ${corners} corners: there is no corner ${shortNumber(digits)}.`,
      `Write a number from 1 to ${last}, such as ${letter}@1.`,
    );
  return { ok: true, remark: { kind, corner }, end };
}

function shortNumber(digits: string): string {
  return digits.length <= 6 ? String(Number(digits)) : `${digits.slice(0, 6)}…`;
}

function refuseTimeAfterRemark(text: string, at: number, word: string) {
  const isCorner = /^\d{1,3}$/.test(word) && /[a-z]/.test(text.charAt(at - 1));
  if (isCorner)
    return refuse(
      at,
      word.length,
      "The number of a corner stands behind @.",
      `Write ${text.charAt(at - 1)}@${word} for corner ${word}.`,
    );
  const before = text.slice(0, at).trim();
  return refuse(
    at,
    word.length,
    `${quoted(word)} stands after a remark: times come first.`,
    /\d/.test(before)
      ? `Write the times first, then the remarks, such as 1:23.456 ${off.letter}@5.`
      : `Write ${word} ${before}.`,
  );
}
