/**
 * What a remark makes of a lap. `place`: where the lap stands in the counts · `line`: its line of the time account, or as
 * what it is counted beside it · `spoils`: the lap is not clean · `mistake`: the driver's own · `apart`: the lap does not
 * count as timed at all.
 */
const weights = {
  apart: { place: "outOrIn", line: undefined, spoils: false, mistake: false, apart: true },
  cut: { place: "cut", line: "cut", spoils: true, mistake: false, apart: false },
  mistake: { place: "mistake", line: "mistakes", spoils: true, mistake: true, apart: false },
  others: { place: "others", line: "others", spoils: true, mistake: false, apart: false },
} as const;

/**
 * The remarks a lap may carry: the only list of them. `letter` is what is typed after a time; `named` is the word with its
 * article; `pad` is the key's page and its order among all keys; `mark` is its shape in a strip of laps; the rest is the
 * remark's weight.
 */
export const remarkKinds = [
  {
    kind: "out",
    letter: "o",
    word: "out lap",
    named: "an out lap",
    pad: ["seldom", 7],
    mark: "leaving",
    ...weights.apart,
  },
  {
    kind: "in",
    letter: "i",
    word: "in lap",
    named: "an in lap",
    pad: ["seldom", 8],
    mark: "coming in",
    ...weights.apart,
  },
  { kind: "cut", letter: "c", word: "cut", named: "a cut", pad: ["often", 3], mark: "notch", ...weights.cut },
  {
    kind: "off",
    letter: "f",
    word: "off",
    named: "an off",
    pad: ["often", 1],
    mark: "tick",
    ...weights.mistake,
  },
  {
    kind: "spin",
    letter: "s",
    word: "spin",
    named: "a spin",
    pad: ["often", 2],
    mark: "loop",
    ...weights.mistake,
  },
  {
    kind: "contact",
    letter: "k",
    word: "contact",
    named: "a contact",
    pad: ["seldom", 5],
    mark: "wall",
    ...weights.mistake,
  },
  {
    kind: "traffic",
    letter: "t",
    word: "traffic",
    named: "traffic",
    pad: ["seldom", 4],
    mark: "two dots",
    ...weights.others,
  },
  {
    kind: "slow",
    letter: "z",
    word: "slow zone",
    named: "a slow zone",
    pad: ["seldom", 6],
    mark: "two bars",
    ...weights.others,
  },
] as const;

type RemarkRecord = (typeof remarkKinds)[number];
export type RemarkKind = RemarkRecord["kind"];
export type RemarkLetter = RemarkRecord["letter"];
export type RemarkPlace = RemarkRecord["place"];

/** The places that remarks give, the deciding one of a lap with several first. */
const placesByWeight = Object.values(weights).map(({ place }) => place);

/** A remark on a lap; it may name the corner by its number. */
export interface Remark {
  readonly kind: RemarkKind;
  readonly corner?: number;
}

/** All that is fixed about one kind of remark. */
export function aboutRemark(kind: RemarkKind): RemarkRecord {
  const found = remarkKinds.find((remark) => remark.kind === kind);
  if (found === undefined) throw new RangeError(`no remark of the kind ${kind}`);
  return found;
}

/** The place that a lap's remarks give it; undefined without a remark. */
export function placeOfRemarks(remarks: readonly Remark[]): RemarkPlace | undefined {
  if (remarks.length === 0) return undefined;
  const given = remarks.map(({ kind }) => aboutRemark(kind).place);
  return placesByWeight.find((place) => given.includes(place));
}

/** The remark that decides where a lap counts, the first of them where several do; undefined without a remark. */
export function remarkToTell(remarks: readonly Remark[]): RemarkKind | undefined {
  const place = placeOfRemarks(remarks);
  return remarks.find(({ kind }) => aboutRemark(kind).place === place)?.kind;
}

/** The remarks with a key on a page of the pad, in the order of the keys. */
export function remarksOnPad(page: RemarkRecord["pad"][0]): readonly RemarkRecord[] {
  return remarkKinds.filter(({ pad }) => pad[0] === page).sort((a, b) => a.pad[1] - b.pad[1]);
}

/** "off, corner 5" */
export function remarkInWords(remark: Remark): string {
  const { word } = aboutRemark(remark.kind);
  return remark.corner === undefined ? word : `${word}, corner ${remark.corner}`;
}

/** The remarks that give a place, named one after the other: "an off, a spin or a contact". */
export function remarksNamed(place: RemarkPlace): string {
  const named = remarkKinds.filter((remark) => remark.place === place).map((remark) => remark.named);
  return [named.slice(0, -1).join(", "), named.at(-1)].filter(Boolean).join(" or ");
}
