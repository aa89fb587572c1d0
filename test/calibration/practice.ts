import { median, type PastSession } from "#stats";
import {
  type Chance,
  type Driver,
  type DriverKind,
  drawDriver,
  driveSession,
  evenly,
  trueLevel,
} from "../../demo-data/drivers.ts";

/** How a driver's sessions come about. */
export interface Practice {
  /** Sessions that are past, and that are to come. */
  readonly sessions: number;
  readonly ahead: number;
  /** Fewest and most laps of a session; 8 to 37 unless said. */
  readonly laps?: readonly [number, number];
  /** Lasting shift of the level, as a share of the base, at the session with this number (from 0). */
  readonly step?: (session: number) => number;
  /** Further shift that passes (a break); the first session to come has number `sessions`. */
  readonly extra?: (session: number, sessions: number) => number;
  /** Makes another driver of the drawn one. */
  readonly adjust?: (driver: Driver) => Driver;
}

/** A session as driven, and the true level in its middle, ms. */
export interface DrivenSession extends PastSession {
  readonly level: number;
}

export interface Driven {
  readonly past: readonly DrivenSession[];
  readonly later: readonly DrivenSession[];
}

/** Draws a driver of a kind and drives: how many laps a session has, then the driver, then the laps. */
export function drive(kind: DriverKind, practice: Practice, chance: Chance): Driven {
  const { sessions, ahead, laps: [fewest, most] = [8, 37], step, extra, adjust } = practice;
  const counts = Array.from({ length: sessions + ahead }, () => Math.floor(evenly(chance, fewest, most + 1)));
  const pastLaps = counts.slice(0, sessions).reduce((sum, laps) => sum + laps, 0);
  const drawn = drawDriver(kind, chance, pastLaps);
  const driver = adjust?.(drawn) ?? drawn;
  let lapsBefore = 0;
  const all = counts.map((laps, n): DrivenSession => {
    const lasting = step?.(n) ?? 0;
    const shift = lasting + (extra?.(n, sessions) ?? 0);
    const times = driveSession(driver, { lapsBefore, laps, extra: shift }, chance);
    const session = {
      lapsBefore,
      laps,
      medianMs: median(times) ?? 0,
      bestMs: Math.min(...times),
      level: trueLevel(driver, lapsBefore + laps / 2) + lasting * driver.baseMs,
    };
    lapsBefore += laps;
    return session;
  });
  return { past: all.slice(0, sessions), later: all.slice(sessions) };
}
