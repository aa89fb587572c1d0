import type { Car, Combo, RemarkKind } from "#domain";
import type { Driver } from "./drivers.ts";

export const comboKeys = ["ringHatch", "moorSingle", "ringTrainer", "moorHatch"] as const;
export type ComboKey = (typeof comboKeys)[number];

/** What is true of the made-up driver on one combo. */
export interface ComboTruth {
  readonly car: string;
  readonly track: string;
  /** What the combo is in the demo for. */
  readonly shape: "improving" | "flat" | "sparse" | "light";
  /** One for each page of the combo: after a change of physics the learning begins afresh. */
  readonly drivers: readonly [Driver, ...Driver[]];
  /** How often mistakes happen at a corner, by its number, relative to each other. */
  readonly trouble: Readonly<Record<number, number>>;
  /** Lowest speeds that the driver has read off, m/s. */
  readonly lowestSpeeds?: Combo["lowestSpeeds"];
}

/** What the driver has found out about a car. */
export const carFacts: Readonly<Record<string, Pick<Car, "width" | "grip" | "topSpeed">>> = {
  "junior single-seater": { width: 1.7, grip: 1.4, topSpeed: 63 },
};

const steadyHand = { exponent: 0, sessionShift: 0.0013, lapNoise: 0.0044 } as const;
const flat = { ...steadyHand, kind: "flat", span: 0, paceOfLearning: 1 } as const;
const learner = { ...steadyHand, kind: "exponential" } as const;

/** The four combos of the season. */
export const combos: Readonly<Record<ComboKey, ComboTruth>> = {
  ringHatch: {
    car: "club hatch",
    track: "Varnholt Ring",
    shape: "improving",
    drivers: [{ ...learner, baseMs: 84_300, span: 0.034, paceOfLearning: 130 }],
    trouble: { 5: 9, 8: 3, 11: 3, 2: 1, 3: 1 },
    lowestSpeeds: [{ number: 8, speed: 25.3 }],
  },
  moorSingle: {
    car: "junior single-seater",
    track: "Tessemoor",
    shape: "flat",
    drivers: [{ ...flat, baseMs: 56_450 }],
    trouble: { 4: 4, 7: 2, 1: 1 },
  },
  ringTrainer: {
    car: "endurance trainer",
    track: "Varnholt Ring",
    shape: "sparse",
    drivers: [{ ...learner, baseMs: 76_100, span: 0.05, paceOfLearning: 60 }],
    trouble: { 5: 3, 9: 1 },
  },
  moorHatch: {
    car: "club hatch",
    track: "Tessemoor",
    shape: "light",
    drivers: [
      { ...learner, baseMs: 62_700, span: 0.012, paceOfLearning: 90 },
      { ...learner, baseMs: 63_600, span: 0.01, paceOfLearning: 60 },
    ],
    trouble: { 4: 3, 7: 3, 8: 1 },
  },
};

/** What a kind of remark costs on top of the lap, ms, and how often it happens on a lap. */
export const mishaps: readonly {
  readonly kind: RemarkKind | "wall";
  readonly chance: number;
  readonly costs: readonly [number, number];
}[] = [
  { kind: "off", chance: 0.04, costs: [1500, 5000] },
  { kind: "spin", chance: 0.012, costs: [5000, 11_000] },
  { kind: "contact", chance: 0.006, costs: [800, 3000] },
  { kind: "cut", chance: 0.03, costs: [-300, 50] },
  { kind: "traffic", chance: 0.03, costs: [400, 2200] },
  { kind: "slow", chance: 0.004, costs: [2500, 6000] },
  { kind: "wall", chance: 0.01, costs: [0, 0] },
];

/** What a way of driving costs, as a share of the lap. */
export const slower = {
  "warm-up": 0.035,
  drill: 0.012,
  learning: 0.03,
  brisk: 0.004,
  damp: 0.05,
  wet: 0.1,
  race: 0.006,
  raceStart: 0.06,
  guest: 0.055,
} as const;

/** What ten days and more away cost at first, as a share of the lap, and in how many laps it halves. */
export const afterBreak = { combo: "ringHatch", cost: 0.0045, lapsToHalve: 20 } as const;

/**
 * What the changes of the rig did. The gain helped in the club hatch, whose steering had been cut off at the old one;
 * the other cars never came near the limit. The new field of view did nothing to the times.
 */
export const settingEffects = {
  gain: { car: "club hatch", from: "2026-09-30", share: -0.0045 },
  view: { from: "2026-10-24", share: 0 },
} as const;
