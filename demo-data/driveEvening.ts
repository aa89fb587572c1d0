import type { Id, Run, Session } from "#domain";
import type { DrivenLap } from "./driveLaps.ts";
import { driveRun } from "./driveRun.ts";
import { type Chance, evenly } from "./drivers.ts";
import type { Drive, Evening } from "./evening.ts";
import { driveLevels, type Practice, shareOfBreak, trueMedian } from "./levels.ts";
import { countMeant, type Meant, noLaps } from "./meant.ts";
import type { Rigs } from "./rigs.ts";
import { type CarriedOver, carryOver, runRow } from "./runRow.ts";
import { sessionRow, timesOf } from "./sessionRow.ts";
import type { Stamp } from "./stamps.ts";
import { tellLines } from "./tellLines.ts";

/** All that an evening begins with. */
export interface EveningStart {
  readonly evening: Evening;
  readonly comboId: Id;
  readonly practice: Practice;
  readonly carried: CarriedOver;
  readonly rigs: Rigs;
  readonly testId: Id;
  /** Runs of the gain test driven before. */
  readonly testRuns: number;
}

/** An evening's rows, and the truth about it. */
export interface DrivenEvening {
  readonly evening: Evening;
  readonly session: Session;
  readonly runs: readonly Run[];
  /** Runs of the gain test among them. */
  readonly testRuns: number;
  readonly practice: Practice;
  readonly carried: CarriedOver;
  readonly meant: Meant;
  readonly guestLaps: number;
  /** Own laps driven on the page before it, and in it. */
  readonly lapsBefore: number;
  readonly laps: number;
  /** Median of the lap times that practice, break and rig give, without the form of the evening, ms. */
  readonly trueMedianMs: number;
}

/** Drives an evening run after run and writes it down. */
export function driveEvening(start: EveningStart, stamp: Stamp, chance: Chance): DrivenEvening {
  const { evening, comboId, practice } = start;
  const laps = evening.drives.filter(isOwn).reduce((sum, drive) => sum + drive.laps, 0);
  const levels = driveLevels(evening.combo, practice, laps, chance);
  const { startedAt, writtenFrom } = timesOf(evening);
  const stamped = stamp(writtenFrom);
  const plan = evening.plan && tellLines(evening.plan, () => stamp(writtenFrom).id);
  const runs: Run[] = [];
  const meant = noLaps();
  let [carried, now, shares, testRuns] = [start.carried, writtenFrom, 0, 0];
  for (const drive of evening.drives) {
    const own = isOwn(drive) ? levels.splice(0, drive.laps) : [];
    const driven = driveRun({ ...start, drive, levels: own, testRuns: start.testRuns + testRuns }, chance);
    carried = carryOver(carried, drive);
    const endsAt = now + timeTaken(driven.laps);
    const times = evening.isEnteredLater
      ? { startedAt, endedAt: startedAt, typedFrom: now }
      : { startedAt: now, endedAt: endsAt, typedFrom: endsAt };
    const session = { id: stamped.id, comboId };
    const { rigId, rigTest } = driven;
    const line = plan?.[(drive.line ?? 0) - 1]?.id;
    const n = runs.length + 1;
    const toWrite = { drive, laps: driven.laps, session, n, rigId, rigTest, carried, line };
    const { row, typedTo } = runRow({ ...toWrite, ...times }, stamp, chance);
    runs.push(row);
    if (rigTest !== undefined) testRuns++;
    if (isOwn(drive)) countMeant(meant, drive, driven.laps);
    shares += driven.share / evening.drives.length;
    now = typedTo + Math.round(evenly(chance, 40_000, 110_000));
  }
  const share = shares + shareOfBreak(evening.combo, practice, laps);
  return {
    evening,
    session: sessionRow(stamped, comboId, evening, plan, now),
    runs,
    testRuns,
    practice,
    carried,
    meant,
    guestLaps: evening.drives.reduce((sum, drive) => sum + drive.laps, 0) - laps,
    lapsBefore: practice.laps,
    laps,
    trueMedianMs: Math.round(trueMedian(practice.driver, practice.laps + laps / 2, share)),
  };
}

const isOwn = (drive: Drive) => drive.guest === undefined;

/** From leaving the pits to coming back in, ms. */
function timeTaken(laps: readonly DrivenLap[]): number {
  return laps.reduce((sum, lap) => sum + lap.tookMs, 25_000);
}
