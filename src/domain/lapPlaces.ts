import { lapsInOrder } from "./lapSets.ts";
import { placeOfRemarks, type RemarkPlace } from "./remarks.ts";
import type { Lap, Run } from "./rows.ts";
import { type RunKindOf, setApart } from "./standsApart.ts";

/** Why a lap driven is a pace lap or is not; each lap driven has one place, so the counts add up. */
export const lapPlaces = [
  "pace",
  "settling",
  "cut",
  "mistake",
  "others",
  "noTime",
  "outOrIn",
  "partly",
  "easy",
  "test",
  "wet",
  "drill",
  "warmUp",
  "race",
  "notWritten",
] as const;
/**
 * `settling`: the first laps of a run, by the driver's choice · `others`: traffic or a slow zone · `partly`: written,
 * in a run of which only some laps were · `easy`: effort easy or learning · `test`: in a rig test · `wet`: not dry · `notWritten`: of a summary
 * run, or driven and not written down.
 */
export type LapPlace = (typeof lapPlaces)[number];

/** Laps driven, by place. They add up to `driven`. */
export type LapCounts = Readonly<Record<LapPlace, number>> & { readonly driven: number };

/** Whether fewer laps were written down than were driven, or none but a summary. */
export function isPartlyWritten(run: Pick<Run, "summary" | "lapsDriven">, written: number): boolean {
  return notWritten(run, written) > 0 || run.summary !== undefined;
}

/** Laps of a run that were driven and not written down. */
export function notWritten(run: Pick<Run, "summary" | "lapsDriven">, written: number): number {
  return Math.max(0, (run.summary?.laps ?? 0) - written, (run.lapsDriven ?? 0) - written);
}

/** Laps driven in a run, written down or not. */
export function lapsDriven(run: Pick<Run, "laps" | "summary" | "lapsDriven">): number {
  const written = lapsInOrder(run).length;
  return written + notWritten(run, written);
}

/** A lap with its place. */
export interface LapInPlace {
  readonly lap: Lap;
  readonly place: LapPlace;
}

/**
 * The laps of one run in order, each with its place; for a guest's run, what it would be for the driver's own.
 * @param settlingLaps first laps of the run that do not count, 0 to 3
 */
export function lapsInPlace(run: Run, settlingLaps: number): LapInPlace[] {
  const written = lapsInOrder(run);
  const ofRun = placeOfRun(run) ?? (isPartlyWritten(run, written.length) ? "partly" : undefined);
  return written.map((lap, index) => ({
    lap,
    place: ofRun ?? placeOfLap(lap) ?? (index < settlingLaps ? "settling" : "pace"),
  }));
}

/** Where a lap of a pace run stands for what is said of it; undefined for a clean lap. */
export function placeOfLap({
  ms,
  remarks,
}: {
  readonly ms?: number | undefined;
  readonly remarks: Lap["remarks"];
}): RemarkPlace | "noTime" | undefined {
  const place = placeOfRemarks(remarks);
  return place !== "outOrIn" && ms === undefined ? "noTime" : place;
}

/** Whether a run's clean laps count as pace laps: a pace run, dry, brisk or full, the driver's own, of no rig test. */
export function isPaceRun(run: RunKindOf & Pick<Run, "guest">): boolean {
  return run.guest === undefined && placeOfRun(run) === undefined;
}

/** The place of all laps of a run for the way it was driven; undefined for a pace run. */
function placeOfRun(run: RunKindOf) {
  return run.kind === "race" && run.rigTest === undefined ? "race" : setApart(run);
}

/** No laps at all. */
export function noCounts(): Record<LapPlace | "driven", number> {
  const none = Object.fromEntries(lapPlaces.map((place) => [place, 0])) as Record<LapPlace, number>;
  return { ...none, driven: 0 };
}

/** Counts of several sessions or runs together. */
export function addCounts(all: readonly LapCounts[]): LapCounts {
  const sum = noCounts();
  for (const counts of all) {
    for (const place of lapPlaces) sum[place] += counts[place];
    sum.driven += counts.driven;
  }
  return sum;
}
