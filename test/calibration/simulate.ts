import { median } from "#numbers";
import {
  type Chance,
  chanceFrom,
  type Driver,
  type DriverKind,
  drawDriver,
  driverKinds,
  driveSession,
  evenly,
} from "../../demo-data/drivers.ts";
import { firstReached } from "../../src/stats/targets/firstReached.ts";
import { type ForecastKind, futureFigures } from "../../src/stats/targets/futureFigures.ts";
import { bandOf } from "../../src/stats/weeks/bands.ts";
import type { PastSession } from "../../src/stats/weeks/history.ts";
import type { SessionEvent } from "../../src/stats/weeks/sessionEvents.ts";

export const sessionsAhead = 6;

/** How a set of drivers is simulated. */
export interface Trial {
  readonly sessions: number;
  readonly drivers: number;
  readonly seed: number;
  readonly draws: number;
  readonly targetsEach: number;
  readonly kinds?: readonly DriverKind[];
  /** Kind of the targets; best laps unless said. */
  readonly targets?: ForecastKind;
  /** Fewest and most laps of a session. */
  readonly laps?: readonly [number, number];
  /** Further shift of the session with this number (from 0; the first one to come has number `sessions`). */
  readonly extra?: (session: number, sessions: number) => number;
  /** Makes another driver of the drawn one. */
  readonly adjust?: (driver: Driver) => Driver;
  /** The events the method is told of. */
  readonly events?: (sessions: number) => readonly SessionEvent[];
}

/** One forecast with what came of it. */
export interface Outcome {
  readonly chance: number;
  readonly reached: boolean;
}

export interface Measured {
  /** For each kind of driver, whether each later median fell into the 90 % band; one list a session ahead. */
  readonly held: ReadonlyMap<DriverKind, readonly boolean[][]>;
  readonly outcomes: readonly Outcome[];
}

function drive(driver: Driver, trial: Trial, chance: Chance): PastSession[] {
  const [fewest, most] = trial.laps ?? [8, 37];
  let lapsBefore = 0;
  return Array.from({ length: trial.sessions + sessionsAhead }, (_, n) => {
    const laps = Math.floor(evenly(chance, fewest, most + 1));
    const extra = trial.extra?.(n, trial.sessions) ?? 0;
    const times = driveSession(driver, { lapsBefore, laps, extra }, chance);
    const session = { lapsBefore, laps, medianMs: median(times) ?? 0, bestMs: Math.min(...times) };
    lapsBefore += laps;
    return session;
  });
}

/**
 * Simulates drivers of each kind, forecasts their next six sessions from those before (planned at the mean laps of
 * the past), and says what came of it. Targets are drawn evenly from 1.6 % under to 0.4 % over the personal best (or
 * the best median so far).
 */
export function simulate(trial: Trial): Measured {
  const { targets = "best" } = trial;
  const figureOf = ({ bestMs, medianMs }: PastSession) => (targets === "best" ? bestMs : medianMs);
  const held = new Map<DriverKind, boolean[][]>();
  const outcomes: Outcome[] = [];
  for (const [k, kind] of (trial.kinds ?? driverKinds).entries()) {
    const ahead: boolean[][] = Array.from({ length: sessionsAhead }, () => []);
    held.set(kind, ahead);
    for (let n = 0; n < trial.drivers; n++) {
      const chance = chanceFrom(trial.seed + 1_000_003 * (n + 1) + 7919 * k + 31 * trial.sessions);
      const drawn = drawDriver(kind, chance);
      const all = drive(trial.adjust?.(drawn) ?? drawn, trial, chance);
      const history = all.slice(0, trial.sessions);
      const later = all.slice(trial.sessions);
      const rate = history.reduce((sum, { laps }) => sum + laps, 0) / history.length;
      const question = {
        history,
        future: later.map(() => ({ laps: rate })),
        seed: trial.seed + n,
        events: trial.events?.(trial.sessions) ?? [],
        draws: trial.draws,
      };
      const medians = futureFigures(question, "median");
      const figures = targets === "median" ? medians : futureFigures(question, targets);
      if (!medians.known || !figures.known) throw new Error("nothing can be forecast");
      later.forEach(({ medianMs }, i) => {
        const band = bandOf(medians.value[i] ?? []);
        ahead[i]?.push(medianMs >= band.low && medianMs <= band.high);
      });
      const bestSoFar = Math.min(...history.map(figureOf));
      const bestLater = Math.min(...later.map(figureOf));
      for (let t = 0; t < trial.targetsEach; t++) {
        const target = bestSoFar * (1 + evenly(chance, -0.016, 0.004));
        const first = firstReached(figures.value, target);
        const reached = first.reduce((sum, session) => sum + (session < Infinity ? 1 : 0), 0);
        outcomes.push({ chance: reached / first.length, reached: bestLater <= target });
      }
    }
  }
  return { held, outcomes };
}

/** Share of true values. */
export function shareOf(flags: readonly boolean[]): number {
  return flags.filter(Boolean).length / flags.length;
}

/** Forecasts sorted by what was said, in fifths: how many, the mean chance said, the share that came true. */
export function fifths(outcomes: readonly Outcome[]): { count: number; said: number; came: number }[] {
  return [0, 1, 2, 3, 4].map((fifth) => {
    const these = outcomes.filter(({ chance }) => Math.min(4, Math.floor(chance * 5)) === fifth);
    return {
      count: these.length,
      said: these.reduce((sum, { chance }) => sum + chance, 0) / these.length,
      came: shareOf(these.map(({ reached }) => reached)),
    };
  });
}

/** Brier score as a share of that of always saying the base rate. */
export function brierShare(outcomes: readonly Outcome[]): number {
  const base = shareOf(outcomes.map(({ reached }) => reached));
  const score = outcomes.reduce((sum, { chance, reached }) => sum + (chance - Number(reached)) ** 2, 0);
  return score / outcomes.length / (base * (1 - base));
}
