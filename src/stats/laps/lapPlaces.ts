import { aboutRemark, isClean, isMistake, type Lap, type Preferences, type Run } from "#domain";

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
  "wet",
  "drill",
  "warmUp",
  "race",
  "notWritten",
] as const;
/**
 * `settling`: the first laps of a run, by the driver's choice · `others`: traffic or a slow zone · `partly`: written,
 * in a run of which only some laps were · `easy`: effort easy or learning · `wet`: not dry · `notWritten`: of a summary
 * run, or driven and not written down.
 */
export type LapPlace = (typeof lapPlaces)[number];

/** Laps driven, by place. They add up to `driven`. */
export type LapCounts = Readonly<Record<LapPlace, number>> & { readonly driven: number };

/** The driver's choices that the figures depend on. */
export type Choices = Pick<Preferences, "settlingLaps" | "displayDecimals" | "marginPercent">;

/** Whether fewer laps were written down than were driven, or none but a summary. */
export function isPartlyWritten(run: Pick<Run, "summary" | "lapsDriven">, written: number): boolean {
  return notWritten(run, written) > 0 || run.summary !== undefined;
}

/** Laps of a run that were driven and not written down. */
export function notWritten(run: Pick<Run, "summary" | "lapsDriven">, written: number): number {
  return Math.max(0, (run.summary?.laps ?? 0) - written, (run.lapsDriven ?? 0) - written);
}

/**
 * The place of one lap; for a guest's run, what it would be for the driver's own.
 * @param written laps of the run that are written down
 * @param index place of the lap in its run, from 0
 */
export function placeOfLap(run: Run, written: number, lap: Lap, index: number, choices: Choices): LapPlace {
  const byRun = placeByRun(run, written);
  if (byRun !== undefined) return byRun;
  if (lap.remarks.some((remark) => aboutRemark(remark.kind).apart)) return "outOrIn";
  if (lap.ms === undefined) return "noTime";
  if (lap.remarks.some((remark) => remark.kind === "cut")) return "cut";
  if (isMistake(lap)) return "mistake";
  if (!isClean(lap)) return "others";
  return index < choices.settlingLaps ? "settling" : "pace";
}

function placeByRun(run: Run, written: number): LapPlace | undefined {
  if (run.kind === "race") return "race";
  if (run.kind === "warm-up") return "warmUp";
  if (run.kind === "drill") return "drill";
  if (run.surface !== "dry") return "wet";
  if (run.effort === "easy" || run.effort === "learning") return "easy";
  return isPartlyWritten(run, written) ? "partly" : undefined;
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
