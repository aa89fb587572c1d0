import type { Id, RigSettings } from "#domain";
import { type Measure, readMeasure, writeMeasure } from "#entry";
import { type AskedView, screenSize } from "#physics";
import { type LengthUnit, mostSideAngle, sayCurveAsSold } from "#words";
import { rigFields } from "../rigFields.ts";

/** Kinds of screen there is something to work out for. */
export const sumKinds = ["flat", "three", "curved"] as const;
export type SumKind = (typeof sumKinds)[number];

/** Shapes that screens are sold in. Common practice, no source. */
export const shapes = ["16:9", "21:9", "32:9", "16:10", "4:3"] as const;

/** What the sum is worked out from, as it is typed. */
export interface SumTexts {
  /** Id the record will have: storing twice makes no second one. */
  readonly id: Id;
  readonly kind: SumKind;
  /** Lengths without a unit are in it; the diagonal is always in inches, as screens are sold. */
  readonly unit: LengthUnit;
  /** What of the size is typed, alone with the shape or both sides; the rest follows from it. */
  readonly by: "diagonal" | "width" | "height" | "sides";
  readonly diagonal: string;
  readonly shape: string;
  /** Width to height where the shape is none of the list. */
  readonly own: string;
  readonly width: string;
  readonly height: string;
  readonly eyeDistance: string;
  readonly bezel: string;
  readonly sideAngle: string;
  readonly radius: string;
  readonly pixelsAcross: string;
  readonly asked: AskedView;
  /** How wide the outline of a card was made, CSS px; empty while nobody did. */
  readonly card: string;
}

/** The fields a figure is typed into. */
export const sumMeasures = [
  "diagonal",
  "width",
  "height",
  "eyeDistance",
  "bezel",
  "sideAngle",
  "radius",
  "pixelsAcross",
] as const;
export type SumMeasure = (typeof sumMeasures)[number];

/** What a field is called on the drawing, where its place says the rest. */
export const sumLabels = {
  diagonal: "Diagonal",
  width: "Width",
  height: "Height",
  eyeDistance: "Eye to screen",
  bezel: "Frame",
  sideAngle: "Side angle",
  radius: "Radius",
  pixelsAcross: "Pixels across",
  own: "Width to height",
} as const satisfies Record<SumMeasure | "own", string>;
export type SumField = keyof typeof sumLabels;

const INCH = 0.0254;
/** A fifth of an inch is no screen, and 500 inches none that stands in a room. Common practice, no source. */
const diagonals = { least: 5, most: 500 } as const;
const lengths: readonly SumMeasure[] = ["width", "height", "eyeDistance", "bezel", "radius"];

/** How a field is read: as the record's own field, in the unit chosen. */
export function measureOf(key: SumMeasure, unit: LengthUnit): Measure {
  if (key === "diagonal") return { name: "Diagonal", unit: "in", stored: INCH, ...diagonals };
  const field = rigFields.find((one) => one.part === "screen" && one.key === key);
  if (field?.kind !== "measure") throw new Error(`a record has no measure ${key}`);
  const { measure } = field;
  if (key === "sideAngle") return { ...measure, most: mostSideAngle };
  if (unit === "cm" || !lengths.includes(key)) return measure;
  const inches = (cm: number) => Number((cm / 2.54).toPrecision(3));
  return { ...measure, unit: "in", stored: INCH, least: inches(measure.least), most: inches(measure.most) };
}

/** Curved screens are sold by their radius in millimetres, with an R behind it: 1500R. Common practice, no source. */
const soldAs = /^\s*(\d{3,4})\s*R\s*$/i;

/** Reads one field; a radius also as curved screens are sold. */
export function readIn(texts: SumTexts, key: SumMeasure, measure = measureOf(key, texts.unit)) {
  const text = sizeTexts(texts)[key] ?? texts[key];
  if (key !== "radius") return readMeasure(text, measure);
  const reading = readMeasure(text.replace(soldAs, "$1 mm"), measure);
  // Outside the range, the figure may be meant so.
  const [, sold] = soldAs.exec(`${text}R`) ?? [];
  if (reading.ok || sold === undefined || !readMeasure(`${sold} mm`, measure).ok) return reading;
  return {
    ok: false,
    problem: { ...reading.problem, right: sayCurveAsSold(Number(sold), texts.unit) },
  } as const;
}

/** The figure in a field, in metres or degrees; undefined where there is none, or none that can be. */
export function valueIn(texts: SumTexts, key: SumMeasure): number | undefined {
  const reading = readIn(texts, key);
  return reading.ok ? reading.value : undefined;
}

/** The same where it is out of range: what can be drawn of it is drawn. */
export function looseValueIn(texts: SumTexts, key: SumMeasure): number | undefined {
  const wide = { ...measureOf(key, texts.unit), least: -1e6, most: 1e6 };
  const reading = readIn(texts, key, wide);
  return reading.ok ? reading.value : undefined;
}

/** A figure as a field shows it, to a hundredth of its unit. */
export function textOf(value: number | undefined, key: SumMeasure, unit: LengthUnit): string {
  if (value === undefined) return "";
  const { stored = 1 } = measureOf(key, unit);
  return String(Math.round((value / stored) * 100) / 100);
}

/** Width to height, as chosen or typed; undefined where that is no shape. */
export function aspectOf({
  shape,
  own,
}: Pick<SumTexts, "shape" | "own">): readonly [number, number] | undefined {
  const [across = 0, up = 0] = (shape === "own" ? own : shape)
    .replace(/,/g, ".")
    .split(/[:x×/]/)
    .map(Number);
  return across > 0 && up > 0 && Number.isFinite(across / up) ? [across, up] : undefined;
}

/** The size as its fields show it: what is typed, and what follows from it. */
export function sizeTexts(texts: SumTexts): Partial<Record<SumMeasure, string>> & { readonly shape: string } {
  const { by, unit, shape, diagonal, width, height } = texts;
  const typedIn = (key: "diagonal" | "width" | "height") => {
    const reading = readMeasure(texts[key], measureOf(key, unit));
    return reading.ok ? reading.value : undefined;
  };
  const sidesOf = (across: number, up: number) => ({
    width: by === "width" ? width : textOf(across, "width", unit),
    height: by === "height" ? height : textOf(up, "height", unit),
  });
  const diagonalOf = (across: number, up: number) =>
    String(Math.round((Math.hypot(across, up) / INCH) * 10) / 10);
  if (by === "sides") {
    const [across, up] = [typedIn("width"), typedIn("height")];
    if (across === undefined || up === undefined) return { width, height, diagonal: "", shape: "own" };
    return { width, height, diagonal: diagonalOf(across, up), shape: shapeOf(across / up) };
  }
  const aspect = aspectOf(texts);
  // Without a shape nothing follows, and what was typed stands.
  if (aspect === undefined) return { diagonal, width, height, shape };
  const typed = typedIn(by);
  if (typed === undefined) return { diagonal: "", width: "", height: "", [by]: texts[by], shape };
  if (by === "diagonal") {
    const { width: across, height: up } = screenSize({ diagonal: typed, aspect });
    return { diagonal, ...sidesOf(across, up), shape };
  }
  const [wide, high] = aspect;
  const across = by === "width" ? typed : (typed * wide) / high;
  const up = by === "height" ? typed : (typed * high) / wide;
  return { ...sidesOf(across, up), diagonal: diagonalOf(across, up), shape };
}

/** The shape of the list that it is, to a hundredth. */
function shapeOf(ratio: number): string {
  const near = shapes.find((shape) => {
    const [across, up] = aspectOf({ shape, own: "" }) ?? [1, 1];
    return Math.abs((ratio * up) / across - 1) < 0.01;
  });
  return near ?? "own";
}

/** Typing into one field of the size: the others follow it from then on, by the shape unless both sides are typed. */
export function withSize(
  texts: SumTexts,
  typed: { readonly [K in "diagonal" | "shape" | "own" | "width" | "height"]?: string },
): SumTexts {
  const { by } = texts;
  const isBySides = by === "sides";
  if ("width" in typed || "height" in typed) {
    const [key, other] = "width" in typed ? (["width", "height"] as const) : (["height", "width"] as const);
    // The other side stands if it was typed too; else it follows, and what it was before is forgotten.
    const isOtherTyped =
      (isBySides || by === other || aspectOf(texts) === undefined) && texts[other].trim() !== "";
    if (isOtherTyped) return { ...texts, ...typed, by: "sides" };
    return isBySides ? { ...texts, ...typed } : { ...texts, [other]: "", ...typed, by: key };
  }
  if (!isBySides) return { ...texts, ...typed, by: "diagonal" in typed ? "diagonal" : by };
  const shown = sizeTexts(texts);
  const [across, up] = [valueIn(texts, "width"), valueIn(texts, "height")];
  const own =
    across === undefined || up === undefined
      ? texts.own
      : `${textOf(across, "width", texts.unit)}:${textOf(up, "height", texts.unit)}`;
  const leading = "diagonal" in typed ? "diagonal" : texts.width.trim() === "" ? "height" : "width";
  return { ...texts, diagonal: shown.diagonal ?? "", shape: shown.shape, own, ...typed, by: leading };
}

/** The same lengths in another unit; what names its own unit, or is no length, stays as typed. */
export function inUnit(texts: SumTexts, unit: LengthUnit): SumTexts {
  if (unit === texts.unit) return texts;
  const turned = lengths.flatMap((key): [SumMeasure, string][] => {
    const text = texts[key];
    if (!/^[\s\d.,]+$/.test(text)) return [];
    const value = looseValueIn({ ...texts, by: "sides" }, key);
    return value === undefined ? [] : [[key, textOf(value, key, unit)]];
  });
  return { ...texts, ...Object.fromEntries(turned), unit };
}

/** What stands there before anything is typed: the record in force. */
export function startTexts(inForce: RigSettings | undefined, id: Id): SumTexts {
  const screen = inForce?.screen ?? {};
  const kind = sumKinds.find((one) => one === screen.kind) ?? "flat";
  const isUnsized = screen.width === undefined && screen.height === undefined;
  const stored = sumMeasures.map((key): [SumMeasure, string] => {
    const value = key === "diagonal" ? undefined : screen[key];
    return [key, writeMeasure(value, measureOf(key, "cm"))];
  });
  return {
    ...(Object.fromEntries(stored) as Record<SumMeasure, string>),
    id,
    kind,
    unit: "cm",
    by: isUnsized ? "diagonal" : "sides",
    // A record with one side says nothing of the shape.
    shape: isUnsized ? "16:9" : "own",
    own: "",
    asked: inForce?.view.axis === "vertical" ? "upright" : "one",
    card: "",
  };
}

/** What a half-typed sum would be known by: its figures. */
export function wordsOfSum(texts: SumTexts | null): string {
  if (texts === null) return "";
  const { diagonal = "", width = "", shape } = sizeTexts(texts);
  const size =
    texts.by === "diagonal" ? diagonal && `${diagonal} in ${shape}` : width && `${width} ${texts.unit} wide`;
  const far = texts.eyeDistance && `${texts.eyeDistance} ${texts.unit} from the eye`;
  return [size, far].filter((words) => words !== "").join(", ");
}
