import type { Range } from "./ranges.ts";

/**
 * What the figures of a rig, a layout and a run may be, in the units they are stored in (m, degrees, N·m, kg, litres).
 * Common practice, no source: wide enough for what stands in living rooms, narrow enough for slips of a decimal point.
 * The forms and the check of a file read this list.
 */
export const rigRanges = {
  screen: {
    width: { least: 0.1, most: 10 },
    height: { least: 0.05, most: 5 },
    eyeDistance: { least: 0.1, most: 10 },
    radius: { least: 0.2, most: 10 },
    bezel: { least: 0, most: 0.3 },
    sideAngle: { least: 0, most: 120 },
    pixelsAcross: { least: 100, most: 100_000 },
  },
  view: { degrees: { least: 1, most: 360 } },
  wheel: {
    torque: { least: 0, most: 100 },
    gainPercent: { least: 0, most: 1000 },
    damping: { least: -1000, most: 1000 },
    rotation: { least: 90, most: 3600 },
    rimRadius: { least: 0.05, most: 0.5 },
  },
  pedals: {
    brakeForceKg: { least: 0, most: 300 },
    loadCellKg: { least: 0, most: 500 },
    brakeDeadZone: { least: 0, most: 100 },
    throttleDeadZone: { least: 0, most: 100 },
  },
  seat: { height: { least: 0, most: 1.5 }, eyeHeight: { least: 0.2, most: 2.5 } },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Range>>>>;

/** Length of a lap and number of timed sectors. */
export const layoutRanges = {
  length: { least: 50, most: 100_000 },
  sectors: { least: 1, most: 99 },
} as const satisfies Readonly<Record<string, Range>>;

export const cornerRanges = {
  number: { least: 1, most: 999 },
  radius: { least: 1, most: 2000 },
  width: { least: 1, most: 100 },
  angle: { least: 1, most: 360 },
  afterLength: { least: 0, most: 10_000 },
  sector: { least: 1, most: 99 },
  kerb: { least: 0, most: 20 },
  /** m/s. */
  lowestSpeed: { least: 1, most: 150 },
  /** Below zero over the edge. */
  unused: { least: -20, most: 100 },
} as const satisfies Readonly<Record<string, Range>>;

/** What is known of how a car drives: m, m/s², m/s. */
export const carRanges = {
  width: { least: 0.5, most: 4 },
  grip: { least: 0.1, most: 6 },
  braking: { least: 1, most: 70 },
  drive: { least: 0.2, most: 40 },
  topSpeed: { least: 5, most: 200 },
} as const satisfies Readonly<Record<string, Range>>;

/** Figures of a run; `laps` also of its summary. */
export const runRanges = {
  laps: { least: 0, most: 9999 },
  fuelLitres: { least: 0, most: 1000 },
  gridPlace: { least: 0, most: 999 },
  finishPlace: { least: 0, most: 999 },
} as const satisfies Readonly<Record<string, Range>>;

/** How much a driver may mean to practise, and what a plan may say. */
export const practiceRanges = {
  sessionsAWeek: { least: 0.1, most: 21 },
  lapsASession: { least: 1, most: 999 },
  minutes: { least: 5, most: 1440 },
  tries: { least: 0, most: 9999 },
} as const satisfies Readonly<Record<string, Range>>;
