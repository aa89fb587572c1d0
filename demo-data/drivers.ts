/**
 * Simulated drivers whose truth is known: what the calibration of the forecasts is measured on, and what the demo
 * logbook is made from. Everything comes from a seed. The figures' own random numbers are not used here.
 */
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";

export const driverKinds = ["flat", "exponential", "power", "linear"] as const;
export type DriverKind = (typeof driverKinds)[number];

/** The truth about one driver on one combo. Shares are of `baseMs`. */
export interface Driver {
  readonly kind: DriverKind;
  /** Level that practice leads to, in ms (for a flat driver: the level). */
  readonly baseMs: number;
  /** How far above it the driver starts; 0 for a flat driver. */
  readonly span: number;
  /** Exponential: laps that halve the gap. Power: laps in which the gap begins to fall. Linear: laps it takes. */
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

/**
 * A driver of a kind, the rest drawn: base 60–150 s, span 1–10 %, session shifts 0.1–0.5 %, lap noise 0.2–0.8 %. The
 * paces make the kinds alike: most have half of the gap behind them after one to a few dozen sessions.
 */
export function drawDriver(kind: DriverKind, chance: Chance): Driver {
  const paces = {
    flat: [1, 1],
    exponential: [30, 600],
    power: [40, 400],
    linear: [600, 2000],
  } as const;
  const [slow, fast] = paces[kind];
  return {
    kind,
    baseMs: evenly(chance, 60_000, 150_000),
    span: kind === "flat" ? 0 : evenly(chance, 0.01, 0.1),
    paceOfLearning: evenlyInLog(chance, slow, fast),
    exponent: kind === "power" ? evenly(chance, -1, -0.3) : 0,
    sessionShift: evenly(chance, 0.001, 0.005),
    lapNoise: evenly(chance, 0.002, 0.008),
  };
}

/** The driver's true level in ms after so many laps of practice. */
export function trueLevel(driver: Driver, laps: number): number {
  return driver.baseMs * (1 + driver.span * gapLeft(driver, laps));
}

/** Share of the span still left after so many laps. */
function gapLeft({ kind, paceOfLearning, exponent }: Driver, laps: number): number {
  switch (kind) {
    case "flat":
      return 0;
    case "exponential":
      return 2 ** (-laps / paceOfLearning);
    case "power":
      return (1 + laps / paceOfLearning) ** exponent;
    case "linear":
      return Math.max(0, 1 - laps / paceOfLearning);
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
