import { aboutRemark, type Reading, type Remark, type RemarkKind, remarkKinds } from "#domain";
import { quoted, refuse } from "./refuse.ts";
import type { Word } from "./word.ts";

/** The entry line before its note, taken apart. */
export interface EntryParts {
  readonly times: readonly Word[];
  readonly remarks: readonly Remark[];
  /** The letter of an out lap stands at a corner, where laps do not begin: the word off may be meant. */
  readonly isOutAtCorner: boolean;
}

const letters = remarkKinds.map(({ letter, word }) => `${letter} ${word}`).join(", ");
const off = aboutRemark("off");
const out = aboutRemark("out");
const timeSigns = /[0-9:.,'"+-]+/y;
/** Behind @, or up to two digits right behind the remark that are no part of a time. */
const cornerSigns = /@(\d+)|(\d{1,2})(?![0-9:.,'"+-])/y;

/** The remarks by the ways their words are written: "slow zone", "slowzone", "slow". None is a line of letters. */
const kindsByWord = new Map<string, RemarkKind>(
  remarkKinds.flatMap(({ kind, word }) => {
    const [first = word] = word.split(" ");
    return [word, word.replace(" ", ""), first].map((written) => [written, kind] as const);
  }),
);
const longestFirst = [...kindsByWord.keys()].sort((a, b) => b.length - a.length);
const words = new RegExp(`(?:${longestFirst.join("|")})(?![a-z])`, "y");

/**
 * Takes folded text apart into times and remarks: times first, separated by spaces, then letters, each of which may
 * name a corner (f@5, f5), together or apart, with or without a space after the time. A remark may stand as its word.
 * @param corners number of the layout's corners, where known
 */
export function splitEntry(text: string, corners: number | undefined): Reading<EntryParts> {
  const times: Word[] = [];
  const remarks: Remark[] = [];
  let isOutAtCorner = false;
  let at = 0;
  while (at < text.length) {
    const sign = text.charAt(at);
    if (sign === " ") {
      at += 1;
    } else if (/[a-z@]/.test(sign)) {
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
      isOutAtCorner ||= one.remark.corner !== undefined && one.written === out.letter;
      at = one.end;
    } else {
      const time = timeAt(text, at);
      if (remarks.length > 0) return refuseTimeAfterRemark(text, at, time);
      times.push({ text: time, start: at });
      at += time.length;
    }
  }
  return { ok: true, times, remarks, isOutAtCorner };
}

function timeAt(text: string, at: number): string {
  timeSigns.lastIndex = at;
  return timeSigns.exec(text)?.[0] ?? text.charAt(at);
}

function matchAt(signs: RegExp, text: string, at: number): RegExpExecArray | null {
  signs.lastIndex = at;
  return signs.exec(text);
}

/** What stands for a remark at a place: its word, or one letter; undefined where neither does. */
function writtenAt(text: string, at: number): string | undefined {
  const isWordStart = !/[a-z]/.test(text.charAt(at - 1));
  const word = isWordStart ? matchAt(words, text, at)?.[0] : undefined;
  return word ?? matchAt(/[a-z]/y, text, at)?.[0];
}

interface ReadRemark {
  readonly remark: Remark;
  /** The letter or the word it was typed as. */
  readonly written: string;
  readonly end: number;
}

function readRemark(text: string, at: number, corners: number | undefined): Reading<ReadRemark> {
  const written = writtenAt(text, at);
  if (written === undefined)
    return refuse(
      at,
      1,
      "A corner needs a remark before it.",
      `Write ${off.letter}@5 for ${off.word} at corner 5.`,
    );
  const kind = kindsByWord.get(written) ?? remarkKinds.find(({ letter }) => letter === written)?.kind;
  if (kind === undefined)
    return refuse(at, 1, `${quoted(written)} is not a remark.`, `The remarks are: ${letters}.`);
  const cornerAt = at + written.length;
  const [signs = "", afterSign, after] = matchAt(cornerSigns, text, cornerAt) ?? [];
  const digits = afterSign ?? after;
  const end = cornerAt + signs.length;
  if (digits === undefined) {
    if (text.charAt(end) === "@")
      return refuse(
        end,
        1,
        `After ${quoted(`${written}@`)} the number of the corner is missing.`,
        `Write ${written}@5 for corner 5, or ${written} alone.`,
      );
    return { ok: true, remark: { kind }, written, end };
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
      `Write a number from 1 to ${last}, such as ${written}@1.`,
    );
  return { ok: true, remark: { kind, corner }, written, end };
}

function shortNumber(digits: string): string {
  return digits.length <= 6 ? String(Number(digits)) : `${digits.slice(0, 6)}…`;
}

function refuseTimeAfterRemark(text: string, at: number, word: string) {
  const before = text.slice(0, at).trim();
  const remark = /[a-z]+$/.exec(before)?.[0];
  if (/^\d{1,3}$/.test(word) && remark !== undefined)
    return refuse(at, word.length, "Put the corner after @.", `Write ${remark}@${word} for corner ${word}.`);
  return refuse(
    at,
    word.length,
    `${quoted(word)} stands after a remark: times come first.`,
    /\d/.test(before)
      ? `Write the times first, then the remarks, such as 1:23.456 ${off.letter}@5.`
      : `Write ${word} ${before}.`,
  );
}
