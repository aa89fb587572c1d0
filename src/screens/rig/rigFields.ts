import { longestName, longestText, type Range, type RigSettings, rigRanges } from "#domain";
import type { Measure } from "#entry";
import { asSentence } from "#words";

export type RigPart = "screen" | "view" | "wheel" | "pedals" | "seat";
type ScreenKind = NonNullable<RigSettings["screen"]["kind"]>;

interface Anywhere {
  readonly part: RigPart;
  /** Its name in the row. */
  readonly key: string;
  /** What it is called inside a sentence, and where it begins one. */
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  /** Kinds of screen it makes sense for; absent means all. */
  readonly screens?: readonly (ScreenKind | undefined)[];
}
export interface MeasureField extends Anywhere {
  readonly kind: "measure";
  readonly measure: Measure;
  /** Asked about, not refused, where what is typed is more. */
  readonly usualMost?: number;
}
export interface WordsField extends Anywhere {
  readonly kind: "words";
  readonly most: number;
  readonly isLong?: true;
}
export interface ChoiceField extends Anywhere {
  readonly kind: "choice";
  readonly options: readonly { readonly value: string; readonly label: string }[];
}
export type RigField = MeasureField | WordsField | ChoiceField;

const onDesk = ["flat", "three", "curved", undefined] as const;
const { screen, view, wheel, pedals, seat } = rigRanges;
/** A length typed in centimetres. */
const cm = ({ least, most }: Range) =>
  ({ unit: "cm", stored: 0.01, least: Math.round(least * 100), most: Math.round(most * 100) }) as const;

const percentOfTravel = (range: Range) => ({ unit: "%", ...range });

function measure(
  part: RigPart,
  key: string,
  name: string,
  range: Omit<Measure, "name">,
  more: Pick<MeasureField, "hint" | "screens" | "usualMost"> = {},
): MeasureField {
  const label = asSentence(name);
  return { kind: "measure", part, key, name, label, measure: { name: label, ...range }, ...more };
}
function words(part: RigPart, key: string, name: string, isLong: boolean, hint?: string): WordsField {
  const label = asSentence(name);
  const field = { kind: "words", part, key, name, label, ...(hint !== undefined && { hint }) } as const;
  return isLong ? { ...field, most: longestText, isLong } : { ...field, most: longestName };
}

/** Every field of a record, in the order of the form: one list for form, page, timeline and messages. */
export const rigFields: readonly RigField[] = [
  {
    kind: "choice",
    part: "screen",
    key: "kind",
    name: "kind of screen",
    label: "Kind of screen",
    options: [
      { value: "flat", label: "one flat" },
      { value: "curved", label: "curved" },
      { value: "three", label: "three" },
      { value: "headset", label: "headset" },
    ],
  },
  measure("screen", "width", "width of the picture", cm(screen.width), {
    hint: "without the frame; of one screen; along the glass of a curved one",
    screens: onDesk,
  }),
  measure("screen", "height", "height of the picture", cm(screen.height), { screens: onDesk }),
  measure("screen", "eyeDistance", "eye to screen", cm(screen.eyeDistance), { screens: onDesk }),
  measure("screen", "radius", "radius of the curve", cm(screen.radius), {
    hint: "a screen called 1500R has 150 cm",
    screens: ["curved"],
  }),
  measure("screen", "bezel", "frame beside a picture", cm(screen.bezel), { screens: ["three"] }),
  measure(
    "screen",
    "sideAngle",
    "angle of the side screens",
    { unit: "°", ...screen.sideAngle },
    {
      hint: "0 when all three stand in one line",
      screens: ["three"],
    },
  ),
  measure("screen", "pixelsAcross", "pixels across one screen", {
    unit: "",
    ...screen.pixelsAcross,
    isWhole: true,
  }),
  measure(
    "view",
    "degrees",
    "field of view",
    { unit: "°", ...view.degrees },
    { hint: "as set in the simulator" },
  ),
  {
    kind: "choice",
    part: "view",
    key: "axis",
    name: "measured",
    label: "Measured",
    options: [
      { value: "horizontal", label: "across" },
      { value: "vertical", label: "upright" },
    ],
  },
  words("view", "note", "note on the view", true),
  words("wheel", "name", "which wheel", false),
  measure("wheel", "torque", "torque at most", { unit: "N·m", ...wheel.torque }),
  measure("wheel", "gainPercent", "gain", { unit: "%", ...wheel.gainPercent }, { usualMost: 100 }),
  measure(
    "wheel",
    "damping",
    "damping",
    { unit: "", ...wheel.damping },
    { hint: "as the simulator or the wheel shows it" },
  ),
  measure("wheel", "rotation", "rotation", { unit: "°", ...wheel.rotation }, { hint: "from lock to lock" }),
  measure("wheel", "rimRadius", "radius of the rim", cm(wheel.rimRadius)),
  words("wheel", "note", "note on the wheel", true),
  words("pedals", "name", "which pedals", false),
  measure(
    "pedals",
    "brakeForceKg",
    "full brake at",
    { unit: "kg", ...pedals.brakeForceKg },
    { hint: "how hard you press for all of the brake" },
  ),
  measure(
    "pedals",
    "loadCellKg",
    "range of the load cell",
    { unit: "kg", ...pedals.loadCellKg },
    { hint: "the most that it can measure; empty without one" },
  ),
  measure("pedals", "brakeDeadZone", "dead zone of the brake", percentOfTravel(pedals.brakeDeadZone), {
    hint: "of the travel, before anything happens",
  }),
  measure(
    "pedals",
    "throttleDeadZone",
    "dead zone of the throttle",
    percentOfTravel(pedals.throttleDeadZone),
    {
      hint: "of the travel, before anything happens",
    },
  ),
  words("pedals", "curve", "brake curve", false, "such as: straight, or half the brake at 70 % of the force"),
  words("pedals", "note", "note on the pedals", true),
  measure("seat", "height", "height of the seat", cm(seat.height), {
    hint: "its lowest point above the floor under the pedals",
  }),
  measure("seat", "eyeHeight", "height of the eyes", cm(seat.eyeHeight), {
    hint: "above the floor under the pedals",
  }),
  words("seat", "note", "note on the seat", true),
];

/** The parts as headings, in order. */
export const rigParts: Readonly<Record<RigPart, string>> = {
  screen: "Screen",
  view: "View",
  wheel: "Wheel and force feedback",
  pedals: "Pedals",
  seat: "Seat",
};

/** Whether a field makes sense for a kind of screen. */
export function isAsked({ screens }: RigField, kind: string | undefined): boolean {
  return screens === undefined || screens.some((one) => one === kind);
}
