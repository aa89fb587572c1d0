import type { RigSettings } from "#domain";
import { readMeasure } from "#entry";
import { type ScreenSetup, screenView } from "#physics";
import { sayNoView, sayScreenView } from "#words";
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

const needed: Readonly<Record<ScreenSetup["kind"], readonly (keyof Screen)[]>> = {
  flat: ["width", "eyeDistance"],
  curved: ["width", "eyeDistance", "radius"],
  three: ["width", "eyeDistance", "sideAngle"],
};

/**
 * A screen of a record as its field of view is worked out; what is missing for that is named. A frame not written down counts
 * as none. A headset has neither.
 */
export function setupOf(screen: Screen): {
  readonly missing: readonly (keyof Screen)[];
  readonly setup: ScreenSetup | undefined;
} {
  const {
    kind = "flat",
    width = 0,
    eyeDistance: distance = 0,
    radius = 0,
    sideAngle = 0,
    bezel = 0,
  } = screen;
  if (kind === "headset") return { missing: [], setup: undefined };
  const missing = needed[kind].filter((key) => screen[key] === undefined);
  const glass = { width, height: screen.height, distance };
  const setups = {
    flat: { ...glass, kind: "flat" },
    three: { ...glass, kind: "three", sideAngle, bezel },
    curved: { ...glass, kind: "curved", radius },
  } as const satisfies Record<ScreenSetup["kind"], ScreenSetup>;
  return { missing, setup: missing.length > 0 ? undefined : setups[kind] };
}

/**
 * The field of view at which the picture has its true size, in words: "56.6° across, 33.7° upright". What is missing
 * for it is named; undefined for a headset, and while nothing of the screen is known.
 */
export function sayTrueSize(screen: Screen): string | undefined {
  if (screen.kind === "headset" || Object.keys(screen).length === 0) return undefined;
  const { missing, setup } = setupOf(screen);
  const view = setup && screenView(setup);
  return view?.known ? sayScreenView(view.value) : sayNoView(missing.map(nameOfScreenField), view);
}

/** What a field of the screen is called inside a sentence. */
export function nameOfScreenField(key: keyof Screen): string {
  return rigFields.find((field) => field.part === "screen" && field.key === key)?.name ?? key;
}
