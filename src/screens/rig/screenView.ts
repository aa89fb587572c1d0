import type { RigSettings } from "#domain";
import { readMeasure } from "#entry";
import { curvedScreen, type FieldOfView, flatScreen, threeScreens } from "#physics";
import { sayReason } from "#words";
import { rigFields } from "./rigFields.ts";
import { type RigTexts, textKey } from "./rigTexts.ts";

type Screen = RigSettings["screen"];

/** The screen as far as it can be read from a form that is still being filled in. */
export function screenBeingTyped(texts: RigTexts): Screen {
  const lengths = rigFields.flatMap((field): [string, number][] => {
    if (field.part !== "screen" || field.kind !== "measure") return [];
    const reading = readMeasure(texts[textKey(field)] ?? "", field.measure);
    return reading.ok && reading.value !== undefined ? [[field.key, reading.value]] : [];
  });
  const kind = texts["screen.kind"];
  return { ...Object.fromEntries(lengths), ...(kind && { kind: kind as NonNullable<Screen["kind"]> }) };
}

const needed: Readonly<Record<"flat" | "curved" | "three", readonly (keyof Screen)[]>> = {
  flat: ["width", "eyeDistance"],
  curved: ["width", "eyeDistance", "radius"],
  three: ["width", "eyeDistance", "sideAngle"],
};

/**
 * The field of view at which the picture has its true size, in words: "56.6° across, 33.7° upright". What is missing
 * for it is named; undefined for a headset, and while nothing of the screen is known. A frame not written down counts
 * as none.
 */
export function sayScreenView(screen: Screen): string | undefined {
  const {
    kind = "flat",
    width = 0,
    eyeDistance: distance = 0,
    radius = 0,
    sideAngle = 0,
    bezel = 0,
  } = screen;
  if (kind === "headset" || Object.keys(screen).length === 0) return undefined;
  const missing = needed[kind].filter((key) => screen[key] === undefined).map(nameOf);
  if (missing.length > 0) return `To work it out, write down: ${missing.join(", ")}.`;
  // The upright angle alone depends on the height; without one it is not said.
  const height = screen.height ?? width;
  const view =
    kind === "three"
      ? threeScreens({ width, height, distance, sideAngle, bezel })
      : kind === "curved"
        ? curvedScreen({ arcWidth: width, height, radius, distance })
        : flatScreen({ width, height, distance });
  if (!view.known) return `Not worked out: ${sayReason(view.reason)}.`;
  return sayAngles(view.value, screen.height !== undefined, kind === "three");
}

function sayAngles({ horizontal, vertical }: FieldOfView, hasHeight: boolean, isThree: boolean): string {
  const across = `${horizontal.toFixed(1)}° across${isThree ? " all three" : ""}`;
  return hasHeight ? `${across}, ${vertical.toFixed(1)}° upright` : across;
}

function nameOf(key: keyof Screen): string {
  return rigFields.find((field) => field.part === "screen" && field.key === key)?.name ?? key;
}
