import type { Bend } from "#domain";
import type { AssumedFact } from "#physics";
import { sayRange } from "./cornersSay.ts";
import { listed } from "./counted.ts";

/** What a corner's sums take for what is not known: metres, degrees, m/s, m/s². */
interface Taken {
  readonly bend: Bend;
  readonly innerRadius: number;
  readonly roadWidth: number;
  readonly carWidth: number;
  readonly angle: number;
  readonly grip: number;
  readonly braking: number;
  readonly drive: number;
  readonly approachLength: number;
  readonly exitLength: number;
  readonly topSpeed?: number;
}

const KMH = 3.6;

const facts: Readonly<Record<AssumedFact, (taken: Taken) => string>> = {
  bend: ({ bend }) => `kind of bend: ${bend}`,
  radius: ({ innerRadius }) => `radius of the inner edge: ${innerRadius.toFixed(0)} m`,
  width: ({ roadWidth }) => `road: ${roadWidth.toFixed(0)} m wide`,
  angle: ({ angle }) => `turning through ${angle.toFixed(0)}°`,
  after: ({ exitLength }) => `straight after it: ${exitLength.toFixed(0)} m`,
  before: ({ approachLength }) => `straight before it: ${approachLength.toFixed(0)} m`,
  grip: ({ grip }) => `grip of the tyres: ${grip.toFixed(1)}`,
  "car width": ({ carWidth }) => `car: ${carWidth.toFixed(1)} m wide`,
  braking: ({ braking }) => `braking: ${braking.toFixed(1)} m/s²`,
  drive: ({ drive }) => `drive out of it: ${drive.toFixed(1)} m/s²`,
  "top speed": ({ topSpeed = 0 }) => `top speed: ${(topSpeed * KMH).toFixed(0)} km/h`,
};

/** Each thing that is assumed of a corner, with the value taken: "road: 11 m wide". */
export function sayAssumed(assumed: readonly AssumedFact[], taken: Taken): string[] {
  return assumed.map((fact) => facts[fact](taken));
}

const short: Readonly<Record<AssumedFact, string>> = {
  bend: "kind of bend",
  radius: "radius",
  width: "width",
  angle: "angle",
  after: "straight after",
  before: "straight before",
  grip: "grip",
  "car width": "car’s width",
  braking: "braking",
  drive: "drive",
  "top speed": "top speed",
};

/** In a few words what is assumed of a corner: "assumed: radius, width and grip". */
export function sayAssumedInShort(assumed: readonly AssumedFact[]): string {
  return assumed.length === 0 ? "nothing assumed" : `assumed: ${listed(assumed.map((fact) => short[fact]))}`;
}

type Ends = { readonly low: number; readonly high: number };

interface Plausible {
  readonly grip: Ends;
  readonly width: Ends;
}

/**
 * How far the answer hangs on what is assumed, ms a lap; what the driver told is taken to be a little off.
 * @param assumed what is not known
 * @param plausible within what it is then taken to lie
 * @example "with a grip from 0.9 to 1.4: between 0.15 and 0.24 s"
 */
export function sayHangsOn(
  { grip, width, gap }: Readonly<Record<"grip" | "width" | "gap", Ends>>,
  assumed: readonly AssumedFact[],
  plausible: Plausible,
): string[] {
  const withGrip = assumed.includes("grip")
    ? `with a grip from ${plausible.grip.low} to ${plausible.grip.high}`
    : "with a little less grip or more";
  const onRoad = assumed.includes("width")
    ? `on a road from ${plausible.width.low} to ${plausible.width.high} m wide`
    : "on a road a little narrower or wider";
  return [
    `${withGrip}: ${sayRange(grip)}`,
    `${onRoad}: ${sayRange(width)}`,
    `with each gap misjudged by a quarter of a car: ${sayRange(gap)}`,
  ];
}

/** Said where the lowest speed seen does not go with the bend. */
export const tooSlowForBend =
  "The lowest speed seen is too low for a bend of this kind and width, so the tightest radius is taken. Tell its radius or another kind of bend, or look the speed up again.";
