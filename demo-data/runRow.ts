import type { Id, Lap, Run, RunOfTest, RunSummary } from "#domain";
import type { DrivenLap } from "./driveLaps.ts";
import { type Chance, evenly } from "./drivers.ts";
import type { Drive } from "./evening.ts";
import type { Stamp } from "./stamps.ts";

/** What a run takes over from the one before it on the same combo. */
export type CarriedOver = Pick<Run, "tyres" | "setup" | "fuelLitres">;

/** A run that has been driven and is to be written down. */
export interface RunToWrite {
  readonly drive: Drive;
  readonly laps: readonly DrivenLap[];
  readonly session: { readonly id: Id; readonly comboId: Id };
  readonly n: number;
  readonly rigId: Id;
  readonly rigTest: RunOfTest | undefined;
  readonly carried: CarriedOver;
  /** Id of the line of the plan that it drives. */
  readonly line: Id | undefined;
  /** When it began, and when its laps were typed: at its end, or the day after. */
  readonly startedAt: number;
  readonly endedAt: number;
  readonly typedFrom: number;
}

/** The row of a run and the instant its last lap was typed. */
export function runRow(run: RunToWrite, stamp: Stamp, chance: Chance): { row: Run; typedTo: number } {
  const { drive, laps, session, n, rigId, rigTest, startedAt, endedAt } = run;
  const toWrite = drive.isSummary ? [] : laps.slice(0, drive.remembered);
  let typedTo = run.typedFrom;
  const rows = toWrite.map(({ written }, index): Lap => {
    typedTo += Math.round(evenly(chance, 4000, 9000));
    return { ...stamp(typedTo), n: index + 1, ...written };
  });
  const twice = rows[(drive.typedTwice ?? 0) - 1];
  if (twice !== undefined) {
    typedTo += 5000;
    rows.push({ ...twice, ...stamp(twice.createdAt + 1000, typedTo), n: twice.n + 0.5, deletedAt: typedTo });
  }
  const row: Run = {
    ...stamp(Math.min(startedAt, run.typedFrom), Math.max(typedTo, endedAt)),
    sessionId: session.id,
    comboId: session.comboId,
    n,
    startedAt,
    endedAt,
    kind: drive.kind ?? "pace",
    effort: drive.effort ?? "full",
    surface: drive.surface ?? "dry",
    rigId,
    ...(rigTest && { rigTest }),
    ...(run.line === undefined ? {} : { line: run.line }),
    ...(drive.count && { counts: [drive.count] }),
    ...run.carried,
    ...(drive.guest === undefined ? {} : { guest: drive.guest }),
    ...(drive.isSummary ? { summary: summaryOf(laps) } : {}),
    ...(drive.remembered === undefined ? {} : { lapsDriven: drive.laps }),
    ...(drive.race ? { gridPlace: drive.race.grid, finishPlace: drive.race.finish } : {}),
    note: drive.note ?? "",
    laps: rows,
  };
  return { row, typedTo };
}

/** A run as a driver sums it up: best and usual to tenths, as the display was read in passing. */
function summaryOf(laps: readonly DrivenLap[]): RunSummary {
  const clean = laps
    .filter(({ mishap }) => mishap.remarks.length === 0)
    .map(({ tookMs }) => tookMs)
    .sort((a, b) => a - b);
  const toTenths = (ms = 0) => ms - (ms % 100);
  return {
    laps: laps.length,
    bestMs: toTenths(clean[0]),
    bestDecimals: 1,
    usualMs: toTenths(clean[Math.floor(clean.length / 2)]),
    usualDecimals: 1,
    off: laps.filter(isOwnMistake).length,
  };
}

function isOwnMistake({ mishap }: DrivenLap): boolean {
  return mishap.remarks.some(({ kind }) => kind === "off" || kind === "spin" || kind === "contact");
}

/** What holds from a run on: what it names, and the rest as it was. */
export function carryOver(before: CarriedOver, { tyres, setup, fuelLitres }: Drive): CarriedOver {
  return {
    ...before,
    ...(tyres === undefined ? {} : { tyres }),
    ...(setup === undefined ? {} : { setup }),
    ...(fuelLitres === undefined ? {} : { fuelLitres }),
  };
}
