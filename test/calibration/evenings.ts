import type { Run } from "#domain";
import {
  type RunBasis,
  type RunVerdict,
  runBasis,
  runVerdict,
  type SessionDigest,
  sessionDigest,
} from "#stats";
import {
  type Chance,
  type Driver,
  type DriverKind,
  drawDriver,
  normal,
  skewed,
  trueLevel,
} from "../../demo-data/drivers.ts";
import { aRun, aSession, choices, type Told } from "../unit/stats/someRows.ts";

/** How often somebody drives, and how. */
export interface Evenings {
  readonly kind: DriverKind;
  readonly sessions: number;
  readonly runs: number;
  readonly lapsARun: number;
  /** Days from one session to the next. */
  readonly every: number;
  /** Standard deviation of a run's shift within its session, as a share of the lap. */
  readonly runShift: number;
  /** What the evenings judged are faster or slower by, as a share of the lap, and laps of each of their runs with a spin. */
  readonly tonight?: number;
  readonly spins?: number;
  readonly adjust?: (driver: Driver) => Partial<Driver>;
}

/** Every verdict of some evenings, each driven as if it were the next after the same past. */
export function verdictsAfter(how: Evenings, evenings: number, chance: Chance): RunVerdict[] {
  const { sessions, runs, lapsARun, every, kind, adjust } = how;
  const drawn = drawDriver(kind, chance, sessions * runs * lapsARun);
  const driver = { ...drawn, ...adjust?.(drawn) };
  const past = Array.from({ length: sessions }, (_, n): SessionDigest => {
    const session = aSession(n * every);
    return sessionDigest(
      session,
      drive(driver, { ...how, tonight: 0, spins: 0 }, n, session.id, chance),
      choices,
    );
  });
  const session = aSession(sessions * every);
  const basis = runBasis({ page: past, driven: past, session, surface: "dry" });
  return Array.from({ length: evenings }, () =>
    judged(drive(driver, how, sessions, session.id, chance), basis),
  ).flat();
}

function judged(runs: readonly Run[], basis: RunBasis): RunVerdict[] {
  return runs.map((run, index) =>
    runVerdict({ run, runsBefore: runs.slice(0, index), basis, tests: [], preferences: choices }),
  );
}

/** The runs of the session with a number, from 0. */
function drive(driver: Driver, how: Evenings, n: number, sessionId: string, chance: Chance): Run[] {
  const { runs, lapsARun, runShift, tonight = 0, spins = 0 } = how;
  const ofSession = tonight + driver.sessionShift * normal(chance);
  return Array.from({ length: runs }, (_, run) => {
    const shift = ofSession + runShift * normal(chance);
    const times = Array.from({ length: lapsARun }, (_, lap) => {
      const level = trueLevel(driver, (n * runs + run) * lapsARun + lap);
      return Math.round(level + driver.baseMs * (shift + driver.lapNoise * skewed(chance)));
    });
    const laps = times.map((ms, lap): Told => (lap < spins ? [ms + 5000, "spin"] : ms));
    return aRun(run + 1, laps, { sessionId });
  });
}
