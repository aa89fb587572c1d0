/**
 * The remarks a lap may carry. One list for the entry line, the pad, the sets of laps and the tables.
 * `letter` is what is typed after a time; `spoils` says that the lap is not clean; `mistake` that it was the
 * driver's own mistake; `apart` that the lap does not count as timed at all (out and in laps).
 */
export const remarkKinds = [
  { kind: "out", letter: "o", word: "out lap", spoils: false, mistake: false, apart: true },
  { kind: "in", letter: "i", word: "in lap", spoils: false, mistake: false, apart: true },
  { kind: "cut", letter: "c", word: "cut", spoils: true, mistake: false, apart: false },
  { kind: "off", letter: "f", word: "off", spoils: true, mistake: true, apart: false },
  { kind: "spin", letter: "s", word: "spin", spoils: true, mistake: true, apart: false },
  { kind: "contact", letter: "k", word: "contact", spoils: true, mistake: true, apart: false },
  { kind: "traffic", letter: "t", word: "traffic", spoils: true, mistake: false, apart: false },
  { kind: "slow", letter: "z", word: "slow zone", spoils: true, mistake: false, apart: false },
] as const;

export type RemarkKind = (typeof remarkKinds)[number]["kind"];
export type RemarkLetter = (typeof remarkKinds)[number]["letter"];

/** A remark on a lap; it may name the corner by its number. */
export interface Remark {
  readonly kind: RemarkKind;
  readonly corner?: number;
}

/** All that is fixed about one kind of remark. */
export function aboutRemark(kind: RemarkKind): (typeof remarkKinds)[number] {
  const found = remarkKinds.find((remark) => remark.kind === kind);
  if (found === undefined) throw new RangeError(`no remark of the kind ${kind}`);
  return found;
}

/** "off, corner 5" */
export function remarkInWords(remark: Remark): string {
  const { word } = aboutRemark(remark.kind);
  return remark.corner === undefined ? word : `${word}, corner ${remark.corner}`;
}
