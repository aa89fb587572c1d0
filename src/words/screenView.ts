import type { Figure } from "#domain";
import { type AskedView, type ScreenView, sharpPixelsPerDegree, viewSetting } from "#physics";
import { sayReason } from "./reason.ts";

/** The unit lengths of a screen are told in. */
export type LengthUnit = "cm" | "in";

const metresOf: Readonly<Record<LengthUnit, number>> = { cm: 0.01, in: 0.0254 };

/** @example sayLength(0.5977, "cm") // "59.8 cm" */
export function sayLength(metres: number, unit: LengthUnit): string {
  return `${Math.round((metres / metresOf[unit]) * 10) / 10} ${unit}`;
}

/** @example sayAngle(56.61) // "56.6°" */
export function sayAngle(degrees: number): string {
  return `${degrees.toFixed(1)}°`;
}

/**
 * What to set a simulator to, first.
 * @example "Set the field of view to 57° across (34° upright)"
 */
export function screenViewTitle(view: ScreenView, asked: AskedView): string {
  const [one, all, upright] = (["one", "all", "upright"] as const).map((way) => viewSetting(view, way));
  const across = asked === "all" ? `${all}° across all three` : `${one}° across`;
  if (upright === undefined) return `Set the field of view to ${across}`;
  return asked === "upright"
    ? `Set the field of view to ${upright}° upright (${one}° across)`
    : `Set the field of view to ${across} (${upright}° upright)`;
}

/**
 * What that does, and of what picture it holds: screens turned to the eye need a picture each, which one flat picture is not.
 * @param sideAngle of three screens, degrees
 */
export function screenViewReading(view: ScreenView, sideAngle: number | undefined): string {
  const same = "Then things look as large as they would from the seat";
  if (sideAngle === undefined || sideAngle === 0) return `${same}.`;
  const never = view.all.horizontal >= 180 ? ", and none is 180° wide or more" : "";
  return `${same}, if the simulator draws three views, those at the sides turned by ${Math.round(sideAngle)}°. One flat picture stretched over all three screens cannot do that${never}.`;
}

/** A simulator draws for flat glass: what that does on a curved screen, where the setting fits from edge to edge. */
export function curvedGlassSays({ one, drawnVertical }: ScreenView): string {
  const edges =
    "A simulator draws its picture for flat glass. Set so, it is right at the edges of a curved screen";
  if (drawnVertical === undefined || one.vertical === undefined) return `${edges}, less so in the middle.`;
  const [drawn, seen] = [Math.round(drawnVertical), Math.round(one.vertical)];
  if (drawn === seen) return `${edges} and in the middle.`;
  return `${edges}; in the middle things look ${drawn > seen ? "smaller" : "larger"}: ${drawn}° upright are shown on ${seen}°.`;
}

/** Why a simulator cannot be set upright; undefined where it can. */
export function sayNoUpright({ one, drawnVertical }: ScreenView): string | undefined {
  if (drawnVertical !== undefined) return undefined;
  return one.vertical === undefined
    ? "For upright, type the height of the picture."
    : "Upright it cannot be set: no flat picture is 180° wide or more.";
}

/** @example "56.6° across, 33.7° upright" */
export function sayScreenView(view: ScreenView): string {
  const { one, all, drawnVertical, sides } = view;
  const across = [
    sides === undefined ? `${sayAngle(one.horizontal)} across` : `${sayAngle(one.horizontal)} across one`,
    ...(sides === undefined ? [] : [`${sayAngle(all.horizontal)} across all three`]),
  ];
  return [...across, ...(drawnVertical === undefined ? [] : [`${sayAngle(drawnVertical)} upright`])].join(
    ", ",
  );
}

/** Why there is no field of view. */
export function sayNoView(missing: readonly string[], view: Figure<unknown> | undefined): string | undefined {
  if (missing.length > 0) return `To work it out, write down: ${missing.join(", ")}.`;
  return view === undefined || view.known ? undefined : `Not worked out: ${sayReason(view.reason)}.`;
}

/** That a field has to be mended first: what is wrong stands at the field. */
export function sayToMend(label: string): string {
  return `To work it out, mend “${label}”.`;
}

/** How fine the picture is at its middle. */
export function saySharpness(perDegree: number): string {
  const told = `${Math.round(perDegree)} pixels a degree`;
  return perDegree < sharpPixelsPerDegree
    ? `${told}: single pixels can be seen. An eye that resolves a sixtieth of a degree stops seeing them at ${sharpPixelsPerDegree}.`
    : `${told}: an eye that resolves a sixtieth of a degree no longer sees single pixels, from ${sharpPixelsPerDegree} on.`;
}

/** The largest turn that a side screen of the form may have, degrees. */
export const mostSideAngle = 90;

/** At which turn the eye stands square before the side screens, and what that is good for; told before there is a turn. */
export function saySquareTurn(squareAngle: number, sideAngle: number | undefined): string {
  if (squareAngle > mostSideAngle)
    return "So near the screens no turn up to 90° sets the side screens square to the eye.";
  const square = Math.round(squareAngle);
  if (sideAngle !== undefined && Math.abs(squareAngle - sideAngle) < 1)
    return `The side screens stand square to the eye: at ${square}° each is seen as the middle one is.`;
  return `Turned by ${square}°, each side screen faces the eye and is seen as the middle one is. Turned in farther it fills a little more of what you see, but at a slant.`;
}

/** What is wrong with a curve that its glass would close too far, and what would be right. */
export function tooTightCurve(width: number, unit: LengthUnit): { wrong: string; right: string } {
  const least = Math.ceil(width / Math.PI / metresOf[unit] / 0.1) * 0.1;
  return {
    wrong: `A picture ${sayLength(width, unit)} wide would be more than half a circle at this radius.`,
    right: `Write a radius of ${least.toFixed(1)} ${unit} or more, or a smaller width.`,
  };
}

/**
 * What to write for a curved screen that is sold by its radius in mm.
 * @example sayCurveAsSold(1500, "cm") // "A screen sold as 1500R has a radius of 150 cm: write 1500R, or that."
 */
export function sayCurveAsSold(millimetres: number, unit: LengthUnit): string {
  const length = sayLength(millimetres / 1000, unit);
  return `A screen sold as ${millimetres}R has a radius of ${length}: write ${millimetres}R, or that.`;
}

/** The drawing in words. */
export function sayPlan(
  kind: "flat" | "three" | "curved",
  lengths: { readonly width: string; readonly distance: string },
  view: ScreenView | undefined,
): string {
  const what = { flat: "One flat screen", three: "Three screens", curved: "A curved screen" }[kind];
  const each = kind === "three" ? "each " : "";
  const seen = view === undefined ? "" : ` Seen under ${sayScreenView(view)}.`;
  return `${what} from above, ${each}${lengths.width} wide, ${lengths.distance} from the eye.${seen}`;
}
