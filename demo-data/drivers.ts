/**
 * Simulated drivers whose truth is known: what the calibration of the forecasts is measured on, and what the demo
 * logbook is made from. Everything comes from a seed. The figures' own random numbers are not used here.
 */
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";

/** Those who learn and go on, those who have stopped, and those who get slower. Our methods, §6. */
export const driverKinds = ["flat", "exponential", "power", "linear", "stopped", "slower"] as const;
export type DriverKind = (typeof driverKinds)[number];

/** The truth about one driver on one combo. Shares are of `baseMs`. */
export interface Driver {
  readonly kind: DriverKind;
  /** Level that practice leads to, in ms (for a flat driver: the level). */
  readonly baseMs: number;
  /** How far above it the driver starts, or, getting slower, ends; 0 for a flat driver. */
  readonly span: number;
  /** Exponential: laps that halve the gap. Power: laps in which the gap begins to fall. Others: laps the way takes. */
  readonly paceOfLearning: number;
  /** Power of the power law, below 0; 0 for the others. */
  readonly exponent: number;
  /** Standard deviation of a session's shift. */
  readonly sessionShift: number;
  /** Standard deviation of a lap within its session. */
  readonly lapNoise: number;
}

/** Random numbers of one simulated driver, one after the other. */
export type Chance = () => number;

/** A source of random numbers from 0 to under 1 that belongs to a seed. */
export function chanceFrom(seed: number): Chance {
  const source: RandomGenerator = xoroshiro128plus(seed);
  return () => uniformFloat64(source);
}

/** A number drawn evenly. */
export function evenly(chance: Chance, from: number, to: number): number {
  return from + (to - from) * chance();
}

/** A number drawn evenly on the scale of its logarithm. */
function evenlyInLog(chance: Chance, from: number, to: number): number {
  return from * (to / from) ** chance();
}

/** A standard normal number (Box & Muller 1958). */
export function normal(chance: Chance): number {
  return Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
}

/**
 * A number of mean 0 and standard deviation 1 with a long upper end (skewness 1.4), as lap times have it: a gamma
 * variable of shape 2, the sum of two exponential ones.
 */
export function skewed(chance: Chance): number {
  return (-Math.log(1 - chance()) - Math.log(1 - chance()) - 2) / Math.SQRT2;
}

/** Laps that are past where nothing else is said: 40 sessions of usual length. */
const USUAL_PAST = 900;

/** Spans, and paces in laps, between which a driver of each kind is drawn. */
const drawnBetween = {
  flat: { span: [0, 0], pace: [1, 1] },
  exponential: { span: [0.01, 0.1], pace: [30, 600] },
  power: { span: [0.01, 0.1], pace: [40, 400] },
  linear: { span: [0.01, 0.1], pace: [600, 2000] },
  slower: { span: [0.005, 0.05], pace: [600, 2000] },
} as const;

/**
 * A driver of a kind, the rest drawn: base 60–150 s, session shifts 0.1–0.5 %, lap noise 0.2–0.8 %. Those who learn have a
 * span of 1–10 %, and most have half of the gap behind them after one to a few dozen sessions. Those who have stopped
 * learned 0.5–3 % over the first 30–70 % of what is past; those who get slower lose 0.5–5 % over 600–2,000 laps.
 * @param pastLaps laps driven before the day on which the driver is looked at
 */
export function drawDriver(kind: DriverKind, chance: Chance, pastLaps = USUAL_PAST): Driver {
  const { span, pace } =
    kind === "stopped"
      ? { span: [0.005, 0.03] as const, pace: [0.3 * pastLaps, 0.7 * pastLaps] as const }
      : drawnBetween[kind];
  return {
    kind,
    baseMs: evenly(chance, 60_000, 150_000),
    span: kind === "flat" ? 0 : evenly(chance, span[0], span[1]),
    paceOfLearning:
      kind === "stopped" ? evenly(chance, pace[0], pace[1]) : evenlyInLog(chance, pace[0], pace[1]),
    exponent: kind === "power" ? evenly(chance, -1, -0.3) : 0,
    sessionShift: evenly(chance, 0.001, 0.005),
    lapNoise: evenly(chance, 0.002, 0.008),
  };
}

/** The driver's true level in ms after so many laps of practice. */
export function trueLevel(driver: Driver, laps: number): number {
  return driver.baseMs * (1 + driver.span * gapLeft(driver, laps));
}

/** Share of the span by which the level lies above the base after so many laps. */
function gapLeft({ kind, paceOfLearning, exponent }: Driver, laps: number): number {
  switch (kind) {
    case "flat":
      return 0;
    case "exponential":
      return 2 ** (-laps / paceOfLearning);
    case "power":
      return (1 + laps / paceOfLearning) ** exponent;
    case "linear":
    case "stopped":
      return Math.max(0, 1 - laps / paceOfLearning);
    case "slower":
      return Math.min(1, laps / paceOfLearning);
  }
}

/** What moves a session besides practice. */
export interface SessionTruth {
  readonly lapsBefore: number;
  readonly laps: number;
  /** Further shift of the session as a share of the base (a break, a changed setting). */
  readonly extra?: number;
}

/** The lap times of one session in whole ms: level at each lap, one shift for the session, skewed noise for each lap. */
export function driveSession(driver: Driver, session: SessionTruth, chance: Chance): number[] {
  const shift = driver.sessionShift * normal(chance) + (session.extra ?? 0);
  return Array.from({ length: session.laps }, (_, lap) => {
    const noise = shift + driver.lapNoise * skewed(chance);
    return Math.round(trueLevel(driver, session.lapsBefore + lap) + driver.baseMs * noise);
  });
}
