import {
  cornerRanges,
  type GapPlace,
  type GapScale,
  gapPlaces,
  type Reading,
  type ReviewedCorner,
} from "#domain";
import { foldSign } from "./characters.ts";
import { readNote, strokeAt } from "./note.ts";
import { type Measure, readMeasure } from "./readMeasure.ts";
import { quoted, refuse, shifted } from "./refuse.ts";
import { type SeenWord, seenSigns, signAt } from "./seenWords.ts";
import type { Word } from "./word.ts";

/** What was seen at one corner; an absent gap was not seen. */
export type SeenCorner = Omit<ReviewedCorner, "number">;

/** The road at the three places of a corner, as far as gaps are held against it. */
export interface RoadAtCorner {
  /** Metres between the edges a driver may use; where the width is assumed, the most it is assumed to be. */
  readonly widths: Readonly<Record<GapPlace, number>>;
  readonly isAssumed: boolean;
}

export type GapsReading = Reading<{ readonly seen: SeenCorner }>;

const names: Readonly<Record<GapPlace, string>> = { entry: "Entry", apex: "Apex", exit: "Exit" };
const signs = seenSigns.map(({ letters, words }) => `${letters} ${words}`).join(", ");
const gapShape = /^[+-]?(?:[\d.,]|[h?](?![a-z]))/;
const nothingLeft = /^[+-]?\.$/;
const half = /^([+-]?)h$/;

/** A gap that is typed as a figure: in widths of the car the range is that of metres, for a car of up to 4 m. */
function measureOf(place: GapPlace, unit: "cars" | "metres", carWidth: number): Measure {
  return unit === "metres"
    ? { name: names[place], unit: "m", ...cornerRanges.unused }
    : { name: names[place], unit: "car widths", stored: carWidth, least: -5, most: 25 };
}

/**
 * Reads what a replay showed at one corner, typed in one line: up to three gaps (entry, apex, exit), then words, then a
 * note behind a stroke. A gap is a figure in the unit chosen, or with its own unit (`0.8m`, `30cm`, `0.5w` in car widths);
 * `h` is half a car, `.` nothing left, `?` not seen; below zero it is over the edge. Never throws on any text.
 * @param road where it is given, no more may be left than the road less the car, and no more than one car be over the edge
 * @returns what was seen, gaps in metres; an empty line is a corner of which nothing was seen; or what is wrong
 * @example readGaps("h . -0.2m bl / too soon", { unit: "cars", carWidth: 1.8 })
 * // entry 0.9, apex 0, exit -0.2, braking late, note "too soon"
 */
export function readGaps(text: string, scale: GapScale, road?: RoadAtCorner): GapsReading {
  const stroke = strokeAt(text);
  const note = readNote(text, stroke, ["A corner's note has up to", "."]);
  if (!note.ok) return note;
  const words = wordsOf(text.slice(0, stroke));
  const gaps: { [P in GapPlace]?: number } = {};
  const behind = words.findIndex((word) => !gapShape.test(word.text));
  const typed = behind < 0 ? words : words.slice(0, behind);
  for (const [index, word] of typed.entries()) {
    const place = gapPlaces[index];
    if (place === undefined)
      return refuse(
        word.start,
        word.text.length,
        `${quoted(word.text)} is one gap too many.`,
        "Write at most three: entry, apex, exit.",
      );
    const gap = readGap(word, place, scale);
    if (!gap.ok) return gap;
    if (gap.value === undefined) continue;
    const beyond = road && beyondRoad(gap.value, place, scale, road);
    if (beyond !== undefined) {
      const { wrong, right } = beyond;
      return refuse(word.start, word.text.length, `${names[place]}: ${word.text} is ${wrong}`, right);
    }
    gaps[place] = gap.value;
  }
  const said = readWords(words.slice(typed.length));
  if (!said.ok) return said;
  return { ok: true, seen: { ...gaps, ...said.says, ...(note.note !== undefined && { note: note.note }) } };
}

/** The words before the note in plain signs, each at its place. Signs are folded one for one, so places stay. */
function wordsOf(head: string): Word[] {
  const plain = Array.from({ length: head.length }, (_, at) => foldSign(head.charAt(at))).join("");
  return [...plain.matchAll(/\S+/g)].map((found) => ({ text: found[0], start: found.index }));
}

function readGap(
  { text, start }: Word,
  place: GapPlace,
  { unit, carWidth }: GapScale,
): Reading<{ readonly value: number | undefined }> {
  if (text === "?") return { ok: true, value: undefined };
  if (nothingLeft.test(text)) return { ok: true, value: 0 };
  const isHalf = half.test(text);
  const isInCars = text.endsWith("w");
  const isInMetres = text.endsWith("m");
  const figure = isHalf ? text.replace(half, "$10.5") : isInCars ? text.slice(0, -1) : text;
  const by = isHalf || isInCars ? "cars" : isInMetres ? "metres" : unit;
  const reading = readMeasure(figure, measureOf(place, by, carWidth));
  if (reading.ok) return reading;
  const { wrong } = reading.problem;
  const right = /is not a (?:number|unit)/.test(wrong)
    ? `Write ${by === "cars" ? "car widths, such as 0.3" : "metres, such as 0.8"}, or h for half a car, . for nothing left, ? for not seen, with spaces between them.`
    : reading.problem.right;
  return { ok: false, problem: shifted({ ...reading.problem, length: text.length, right }, start) };
}

/** Takes up what floating point leaves of a road less its car. */
const hair = 1e-9;

function beyondRoad(gap: number, place: GapPlace, scale: GapScale, { widths, isAssumed }: RoadAtCorner) {
  const { unit, carWidth } = scale;
  const write = (metres: number) => {
    const figure = unit === "cars" ? metres / carWidth : metres;
    // Towards nothing, so that what is asked for is taken.
    return `${Math.trunc(figure * 100 + Math.sign(figure) * 1e-6) / 100} ${unit === "cars" ? "car widths" : "m"}`;
  };
  if (gap < -carWidth - hair)
    return {
      wrong: "more than a whole car over the edge.",
      right: `Write at least ${write(-carWidth)}: a car that far out has left the road.`,
    };
  const width = widths[place];
  const most = Math.max(0, width - carWidth);
  if (gap <= most + hair) return undefined;
  const [wide, car] = [`${Number(width.toFixed(2))} m`, `${Number(carWidth.toFixed(2))} m`];
  return {
    wrong: isAssumed
      ? `more than a road leaves that is assumed to be up to ${wide} wide, with a car of ${car}.`
      : `more than the road leaves, which is ${wide} wide there, with a car of ${car}.`,
    right: `Write at most ${write(most)}${isAssumed ? ", or give the road’s width in the layout" : ""}.`,
  };
}

function readWords(words: readonly Word[]): Reading<{ readonly says: SeenWord }> {
  let says: SeenWord = {};
  for (let at = 0; at < words.length; ) {
    const word = words[at] as Word;
    const found = signAt(word.text, words[at + 1]?.text);
    if (found === undefined) return refuseWord(word);
    const { sign, count } = found;
    if (Object.keys(sign.says).some((of) => of in says))
      return refuse(
        word.start,
        word.text.length,
        `${quoted(word.text)} says ${sign.words}, and something of that was said before.`,
        "Say it once.",
      );
    says = { ...says, ...sign.says };
    at += count;
  }
  return { ok: true, says };
}

function refuseWord({ text, start }: Word) {
  if (gapShape.test(text))
    return refuse(
      start,
      text.length,
      `${quoted(text)} stands after a word: gaps come first.`,
      "Write the gaps, then the words, such as h . 0.3 bl.",
    );
  return refuse(
    start,
    text.length,
    `${quoted(text)} is not understood.`,
    `The words are: ${signs}. Anything else is a note, after a stroke: / note.`,
  );
}
