import type { Id, RigSettings, RunOfTest } from "#domain";
import { combos } from "./combos.ts";
import { type DrivenLap, driveLaps } from "./driveLaps.ts";
import { type Chance, driveSession } from "./drivers.ts";
import type { Drive, Evening } from "./evening.ts";
import { placeOfRun } from "./gainTest.ts";
import type { Practice } from "./levels.ts";
import { type Place, places } from "./places.ts";
import { type Rigs, rigOn, shareOfRig } from "./rigs.ts";

/** A run as it was driven. */
export interface DrivenRun {
  readonly laps: readonly DrivenLap[];
  /** The record in force; a run of the test says itself what it was driven with. */
  readonly rigId: Id;
  readonly rigTest: RunOfTest | undefined;
  /** What the rig does to the times, as a share of the lap. */
  readonly share: number;
}

export interface RunToDrive {
  readonly drive: Drive;
  readonly evening: Evening;
  readonly practice: Practice;
  readonly rigs: Rigs;
  readonly testId: Id;
  /** Runs of the gain test driven before. */
  readonly testRuns: number;
  /** The driver's own levels on these laps, ms; a guest has others. */
  readonly levels: readonly number[];
}

/** Drives one run with the rig that is in force, or that the test asks for. */
export function driveRun(run: RunToDrive, chance: Chance): DrivenRun {
  const { drive, evening, practice, rigs } = run;
  const combo = combos[evening.combo];
  const inForce = rigOn(rigs, evening.date);
  const rigTest = drive.isPairOfTest && placeOfRun(run.testId, run.testRuns);
  const rig = rigTest ? rigOfTest(rigs, rigTest) : inForce;
  const share = shareOfRig(rigs, rig, combo.car);
  const { driver } = practice;
  const levels =
    drive.guest === undefined
      ? run.levels
      : driveSession(driver, { lapsBefore: 0, laps: drive.laps }, chance);
  const laps = driveLaps(
    {
      drive,
      combo,
      place: places[combo.track] as Place,
      hasSectors: evening.hasSectors === true,
      levels: levels.map((level) => level + driver.baseMs * share),
    },
    chance,
  );
  return { laps, rigId: inForce.id, rigTest, share };
}

function rigOfTest({ asItWas, lowerGain }: Rigs, { side }: RunOfTest): RigSettings {
  return side === "A" ? asItWas : lowerGain;
}
