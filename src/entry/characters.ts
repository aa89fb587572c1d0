/**
 * One strict grammar over code points. Only the characters named here are folded into plain ones; general
 * compatibility folding (NFKC) would read 1² as 12.
 */
import type { Problem, Reading } from "#domain";
import { readFullForm } from "./fullForms.ts";
import { quoted, refuse } from "./refuse.ts";

/** Folded text, and for each of its signs (and its end) the place in the text as typed. */
export interface Folded {
  readonly text: string;
  readonly places: readonly number[];
}

const understood = /^[0-9a-z:.,'"+\-@ /]$/;
const longestHead = 200;

/** First and last code point of digits that are read: full-width are among the forms of ASCII below. */
const digitRows = [
  0x0660, // Arabic-Indic
  0x06f0, // Persian
  0x0966, // Devanagari
  0x09e6, // Bengali
  0x0e50, // Thai
];

const folds: Readonly<Record<string, string>> = {
  "‘": "'",
  "’": "'",
  "′": "'",
  "“": '"',
  "”": '"',
  "″": '"',
  "−": "-",
  "–": "-",
  "±": "+",
};

/** Characters that people put where a point or a colon belongs: refused, with the right one named. */
const meant: Readonly<Record<string, string>> = {
  "·": ".",
  "•": ".",
  "٫": ".",
  "،": ".",
  "。": ".",
  "、": ".",
  "…": ".",
  ";": ":",
  "∶": ":",
  "×": ":",
  _: "",
};

/** What is printed on both sides of a figure: only nothing at all is a difference. */
const bothSides = /^±/;
const noDifference = /^±0*(?:[.,]0*)?(?: *s)?$/;

/** Spaces that are none of the space bar: printed text has them between a figure and its unit. */
const spaceLike = /[\u00a0\u2000-\u200a\u202f\u205f\u3000]/u;
const besideFigures = /[^\p{L}@\s]/u;

const invisible = /[\s\p{Cc}\p{Default_Ignorable_Code_Point}]/u;

const invisibleNames: Readonly<Record<number, string>> = {
  9: "tab",
  10: "line break",
  13: "line break",
  160: "no-break space",
  173: "soft hyphen",
  8203: "zero-width space",
  8204: "zero-width non-joiner",
  8205: "zero-width joiner",
  8206: "left-to-right mark",
  8207: "right-to-left mark",
  8199: "figure space",
  8201: "thin space",
  8239: "narrow no-break space",
  8232: "line separator",
  8233: "paragraph separator",
  12288: "ideographic space",
  65279: "byte order mark",
};

function invisibleName(code: number): string {
  const hex = code.toString(16).toUpperCase().padStart(4, "0");
  if (code >= 0x2066 && code <= 0x2069) return "direction isolate";
  if (code >= 0x202a && code <= 0x202e) return "direction mark";
  return invisibleNames[code] ?? `invisible character (U+${hex})`;
}

/** One sign as the plain one that is meant: a full-width or Eastern digit, a long minus, a capital letter. */
export function foldSign(sign: string): string {
  const code = sign.codePointAt(0) ?? 0;
  const row = digitRows.find((zero) => code >= zero && code < zero + 10);
  if (row !== undefined) return String(code - row);
  const isFullWidth = code >= 0xff01 && code <= 0xff5e;
  const plain = folds[sign] ?? (isFullWidth ? String.fromCodePoint(code - 0xfee0) : sign);
  return /^[A-Z]$/.test(plain) ? plain.toLowerCase() : plain;
}

/** Where the text begins and ends without the spaces and invisible characters around it, in UTF-16 units. */
export function visiblePart(text: string): { readonly start: number; readonly end: number } {
  let start = 0;
  let end = text.length;
  while (start < end && invisible.test(text.charAt(start))) start += 1;
  while (end > start && invisible.test(text.charAt(end - 1))) end -= 1;
  return { start, end };
}

/**
 * Folds what stands before the note into the plain signs of the grammar: digits, lower-case letters, : . , ' " + - @
 * and the space. Invisible characters at the ends are dropped; inside they are refused by name, as is any sign the
 * grammar does not know. A no-break space beside a letter is a space; between figures it may hide a slip.
 */
export function fold(text: string): Reading<{ folded: Folded }> {
  const { start, end } = visiblePart(text);
  if (end - start > longestHead)
    return refuse(
      start,
      end - start,
      `A lap has at most ${longestHead} characters before its note; this has ${[...text.slice(start, end)].length}.`,
      "Write one lap a line, such as 1:23.456, and anything longer as a note after a stroke: 1:23.456 / note.",
    );
  const visible = text.slice(start, end);
  if (bothSides.test(visible) && !noDifference.test(visible)) return refuseSpread(visible, start);
  const signs: string[] = [];
  const places: number[] = [];
  let place = start;
  for (const sign of visible) {
    const isSpace = spaceLike.test(sign) && isBesideLetter(visible, place - start);
    const plain = isSpace ? " " : foldSign(sign);
    if (!understood.test(plain)) return refuseSign(visible, sign, place, signs.join(""));
    signs.push(plain);
    places.push(place);
    place += sign.length;
  }
  return { ok: true, folded: { text: signs.join(""), places: [...places, end] } };
}

/** Whether the space at this place has a letter on one of its sides. */
function isBesideLetter(text: string, at: number): boolean {
  const before = text.slice(0, at).trimEnd().at(-1) ?? "";
  const after = text.slice(at).trimStart().at(0) ?? "";
  return !(besideFigures.test(before) && besideFigures.test(after));
}

function refuseSpread(text: string, start: number) {
  return refuse(
    start,
    text.length,
    `${quoted(text)} lies to both sides: it is a spread, no lap time and no difference.`,
    "Write a difference with + or -, such as +0.312.",
  );
}

function refuseSign(typed: string, sign: string, place: number, before: string) {
  const where = before === "" ? "at the start" : `after ${quoted(before)}`;
  const right = `Write ${mended(typed) ?? "it with plain digits, colon and point, such as 1:23.456"}.`;
  const code = sign.codePointAt(0) ?? 0;
  if (invisible.test(sign))
    return refuse(place, sign.length, `There is a ${invisibleName(code)} ${where}.`, right);
  if (/\p{Surrogate}/u.test(sign))
    return refuse(place, 1, `There is half of a broken character ${where}.`, right);
  return refuse(place, sign.length, `The character ${quoted(sign)} ${where} is not understood.`, right);
}

/** The text with invisible signs left out and mistaken points and colons put right, where that is enough. */
function mended(typed: string): string | undefined {
  const signs = [...typed].map((sign) =>
    invisible.test(sign) && sign !== " " ? "" : (meant[sign] ?? foldSign(sign)),
  );
  const text = signs.join("");
  if (!signs.every((sign) => sign === "" || understood.test(sign))) return undefined;
  return text.includes(" ") || readFullForm(text)?.ok === true ? text : undefined;
}

/** A problem found in folded text, at its place in the text as typed. */
export function placed(problem: Problem, places: readonly number[]): Problem {
  const at = places[problem.at] ?? 0;
  const end = places[problem.at + problem.length] ?? at;
  return { ...problem, at, length: end - at };
}
