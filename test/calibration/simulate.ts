import { median, type PastSession } from "#stats";
import { chanceFrom, type DriverKind, driverKinds, evenly } from "../../demo-data/drivers.ts";
import { changeOfLevel } from "../../src/stats/level/changeOfLevel.ts";
import { futureLevels } from "../../src/stats/level/futureLevels.ts";
import { levelModel } from "../../src/stats/level/levelModel.ts";
import { levelNow } from "../../src/stats/level/levelNow.ts";
import { firstReached } from "../../src/stats/targets/firstReached.ts";
import { type ForecastKind, futureFigures } from "../../src/stats/targets/futureFigures.ts";
import { bandOf } from "../../src/stats/weeks/bands.ts";
import type { SessionEvent } from "../../src/stats/weeks/sessionEvents.ts";
import { drive, type Practice } from "./practice.ts";

/** Sessions ahead within which a target is to be reached. */
export const horizons = [4, 12] as const;
export type Horizon = (typeof horizons)[number];

/** What a driver can see of the past: medians of the last third against the first. */
export const groups = ["fell", "level", "rose"] as const;
export type Group = (typeof groups)[number];

/** How a set of drivers is simulated. */
export interface Trial extends Omit<Practice, "ahead"> {
  /** Drivers of each kind. */
  readonly drivers: number;
  readonly seed: number;
  readonly draws: number;
  readonly targetsEach: number;
  readonly kinds?: readonly DriverKind[];
  /** Kind of the targets; best laps unless said. */
  readonly targets?: ForecastKind;
  /** The events the method is told of. */
  readonly events?: (sessions: number) => readonly SessionEvent[];
}

/** One forecast of a target with what came of it. */
export interface Outcome {
  readonly within: Horizon;
  readonly chance: number;
  readonly reached: boolean;
}

/** One driver: what was said after the past sessions, and whether it was so. */
export interface Told {
  readonly kind: DriverKind;
  readonly group: Group;
  /** The change of level since the first session: whether its 90 % interval holds the true one, or claims a wrong direction. */
  readonly isChangeHeld: boolean;
  readonly isWrongWay: boolean;
  /** Whether it was said that the level no longer moves, and whether the next four sessions move it by under 0.1 %. */
  readonly isSaidLevel: boolean;
  readonly isLevel: boolean;
  /** For each session to come, whether its median lies in the 90 % band. */
  readonly isInBand: readonly boolean[];
  readonly outcomes: readonly Outcome[];
}

const SMALL = 0.001;
const CLEARLY = 0.003;
const ahead = Math.max(...horizons);
/** A change that is none is given as 0, and no interval need be known better than this, in ms. */
const ROUNDING = 1e-6;

/**
 * Simulates drivers of each kind, asks the level model about them after their past sessions (those to come planned at the
 * mean laps of the past), and compares with what they drive then. Targets are drawn evenly from 1.6 % under the personal
 * best (or best median) up to it.
 */
export function simulate(trial: Trial): Told[] {
  return (trial.kinds ?? driverKinds).flatMap((kind) =>
    Array.from({ length: trial.drivers }, (_, n) => tell(kind, n, trial)),
  );
}

function tell(kind: DriverKind, n: number, trial: Trial): Told {
  const { sessions, draws, targets = "best" } = trial;
  const chance = chanceFrom(
    trial.seed + 1_000_003 * (n + 1) + 7919 * driverKinds.indexOf(kind) + 31 * sessions,
  );
  const { past, later } = drive(kind, { ...trial, ahead }, chance);
  const events = trial.events?.(sessions) ?? [];
  const rate = past.reduce((sum, { laps }) => sum + laps, 0) / sessions;
  const future = later.map(() => ({ laps: rate }));
  const seed = trial.seed + n;

  const model = levelModel({ sessions: past, events });
  const bests =
    targets === "best" ? futureFigures({ history: past, future, events, seed, draws }, "best") : model;
  if (!model.known || !bests.known) throw new Error("two sessions are enough");
  const medians = futureLevels(model.value.posterior, future, seed, draws).medians;
  const figures = bests === model ? medians : (bests.value as readonly Float64Array[]);
  const figureOf = ({ bestMs, medianMs }: PastSession) => (targets === "best" ? bestMs : medianMs);

  const then = past[0]?.level ?? 0;
  const now = past.at(-1)?.level ?? 0;
  const soon = later[3]?.level ?? 0;
  const moved = now - then;
  const { low, high } = changeOfLevel(model.value, 0);
  const fastest = Math.min(...past.map(figureOf));
  return {
    kind,
    group: groupOf(past),
    isChangeHeld: moved >= low - ROUNDING && moved <= high + ROUNDING,
    isWrongWay: (high < 0 && moved >= 0) || (low > 0 && moved <= 0),
    isSaidLevel: levelNow(model.value.posterior).isLevel,
    isLevel: Math.abs(soon / now - 1) < SMALL,
    isInBand: later.map(({ medianMs }, k) => {
      const band = bandOf(medians[k] ?? []);
      return medianMs >= band.low && medianMs <= band.high;
    }),
    outcomes: Array.from({ length: trial.targetsEach }, () => {
      const target = fastest * (1 - evenly(chance, 0, 0.016));
      return horizons.map((within): Outcome => {
        const first = firstReached(figures.slice(0, within), target);
        const reached = first.reduce((sum, session) => sum + (session < Infinity ? 1 : 0), 0);
        const came = Math.min(...later.slice(0, within).map(figureOf));
        return { within, chance: reached / first.length, reached: came <= target };
      });
    }).flat(),
  };
}

function groupOf(past: readonly PastSession[]): Group {
  const third = Math.max(1, Math.floor(past.length / 3));
  const usual = (sessions: readonly PastSession[]) => median(sessions.map(({ medianMs }) => medianMs)) ?? 0;
  const change = usual(past.slice(-third)) / usual(past.slice(0, third)) - 1;
  if (change < -CLEARLY) return "fell";
  return change > CLEARLY ? "rose" : "level";
}
