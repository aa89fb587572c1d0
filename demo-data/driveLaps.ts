import type { Lap } from "#domain";
import { type ComboTruth, slower } from "./combos.ts";
import { type Chance, evenly } from "./drivers.ts";
import type { Drive } from "./evening.ts";
import { drawMishap, type Mishap } from "./mishap.ts";
import type { Place } from "./places.ts";
import { sectorsOf } from "./sectors.ts";

/** A lap as it was driven: what will stand in its row but for id, stamps and place, and what happened on it. */
export interface DrivenLap {
  readonly written: Pick<Lap, "ms" | "decimals" | "sectors" | "source" | "remarks" | "note" | "isNotBest">;
  readonly mishap: Mishap;
  /** How long it took, also where nobody saw the time. */
  readonly tookMs: number;
}

export interface LapsToDrive {
  readonly drive: Drive;
  readonly combo: ComboTruth;
  readonly place: Place;
  readonly hasSectors: boolean;
  /** Times that practice, form and settings give, before the way of driving and what goes wrong, ms. */
  readonly levels: readonly number[];
}

/** The laps of one run. */
export function driveLaps(run: LapsToDrive, chance: Chance): DrivenLap[] {
  return run.levels.map((level, index) => driveLap(run, level, index, chance));
}

function driveLap(run: LapsToDrive, level: number, index: number, chance: Chance): DrivenLap {
  const { drive, combo, place, hasSectors } = run;
  const isStart = index === 0;
  const isOut = isStart && drive.beginsWithOutLap === true;
  const isTowed = drive.towed === index + 1;
  const mishap = isOut
    ? outLap
    : isTowed || drive.remembered !== undefined
      ? none
      : drawMishap(combo, chance);
  const undisturbed = Math.round(level * (1 + shareLost(drive, isStart)) - (isTowed ? towGain : 0));
  const tookMs = undisturbed + mishap.ms;
  if (drive.remembered !== undefined)
    return { mishap, tookMs, written: { ...typed(tookMs - (tookMs % 100), 1), source: "memory" } };
  if (mishap.isWithoutTime)
    return {
      mishap,
      tookMs: Math.round(tookMs * evenly(chance, 0.2, 0.9)),
      written: { source: "typed", remarks: mishap.remarks, note: "into the wall" },
    };
  const corner = mishap.remarks[0]?.corner;
  const lost = { ms: mishap.ms, ...(corner === undefined ? {} : { corner }) };
  const written = {
    ...typed(tookMs, 3),
    remarks: mishap.remarks,
    ...(hasSectors && !isOut ? { sectors: sectorsOf(place, tookMs, lost, chance) } : {}),
    ...(isTowed ? { isNotBest: true as const, note: "towed down the straight" } : {}),
  };
  return { mishap, tookMs, written };
}

/** What the car in front gives, ms. */
const towGain = 400;
const none: Mishap = { ms: 0, remarks: [], isWithoutTime: false };
const outLap: Mishap = { ms: 7400, remarks: [{ kind: "out" }], isWithoutTime: false };

function typed(ms: number, decimals: number) {
  return { ms, decimals, source: "typed" as const, remarks: [] };
}

function shareLost({ kind, effort, surface, race, guest }: Drive, isStart: boolean): number {
  return (
    (kind === "warm-up" || kind === "drill" ? slower[kind] : 0) +
    (effort === "learning" || effort === "brisk" ? slower[effort] : 0) +
    (surface === "damp" || surface === "wet" ? slower[surface] : 0) +
    (race ? slower.race + (isStart ? slower.raceStart : 0) : 0) +
    (guest === undefined ? 0 : slower.guest)
  );
}
