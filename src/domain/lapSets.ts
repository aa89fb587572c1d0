/** Which laps count for what: methods §1. Deleted laps are never asked about here; the reads leave them out. */
import { aboutRemark } from "./remarks.ts";
import type { Lap, Run } from "./rows.ts";

/** Pace laps behind any figure of spread, and behind a usual lap that sessions are compared by (methods §2). */
export const leastForSpread = 5;

/** A lap that has a time. */
export type TimedLap = Lap & { readonly ms: number };

const some = (lap: Pick<Lap, "remarks">, trait: "spoils" | "mistake" | "apart") =>
  lap.remarks.some((remark) => aboutRemark(remark.kind)[trait]);

/** Has a time and is neither an out lap nor an in lap. */
export function isTimed<L extends Pick<Lap, "ms" | "remarks">>(lap: L): lap is L & { readonly ms: number } {
  return lap.ms !== undefined && !some(lap, "apart");
}

/** Timed, without a spoiling remark (cut, off, spin, contact, traffic, slow zone). */
export function isClean<L extends Pick<Lap, "ms" | "remarks">>(lap: L): lap is L & { readonly ms: number } {
  return isTimed(lap) && !some(lap, "spoils");
}

/** Whether a lap may stand as a best of any kind: clean, and not taken back by the driver ("not my PB"). */
export function mayBeBest<
  L extends Pick<Lap, "ms" | "remarks"> & { readonly isNotBest?: boolean | undefined },
>(lap: L): lap is L & { readonly ms: number } {
  return isClean(lap) && lap.isNotBest !== true;
}

/**
 * How much a lap may stand for, each step with all before it: `timed` enters the rate of mistakes, `clean` a usual lap,
 * `best` a best of any kind.
 */
export const lapWorths = ["none", "timed", "clean", "best"] as const;
export type LapWorth = (typeof lapWorths)[number];

/** How much one lap may stand for. */
export function worthOf(
  lap: Pick<Lap, "ms" | "remarks"> & { readonly isNotBest?: boolean | undefined },
): LapWorth {
  if (mayBeBest(lap)) return "best";
  if (isClean(lap)) return "clean";
  return isTimed(lap) ? "timed" : "none";
}

/** Whether what is typed later may be measured by it: clean, and never confirmed as odd. */
export function isMeasure<L extends Pick<Lap, "ms" | "remarks"> & { readonly isOdd?: boolean | undefined }>(
  lap: L,
): lap is L & { readonly ms: number } {
  return isClean(lap) && lap.isOdd !== true;
}

/** The driver's own mistake: off, spin or contact, with a time or without. A lap without a time and without a
 * remark that sets it apart counts as a mistake of unknown cost. */
export function isMistake(lap: Pick<Lap, "ms" | "remarks">): boolean {
  return some(lap, "mistake") || (lap.ms === undefined && !some(lap, "apart"));
}

/**
 * Good enough for a spread: not from memory, and known to all decimals the simulator shows.
 * @param displayDecimals decimals of the simulator's display, 1 to 3
 */
export function isExact(lap: Pick<Lap, "decimals" | "source">, displayDecimals: number): boolean {
  return (lap.decimals ?? 0) >= displayDecimals && lap.source !== "memory";
}

/** Latest value a time known to fewer decimals may stand for: 1:23.4 may have been 1:23.499. */
export function latestMs(lap: { readonly ms: number; readonly decimals?: number }): number {
  return lap.ms + 10 ** (3 - (lap.decimals ?? 3)) - 1;
}

/** The laps of a run that are not deleted, in order. */
export function lapsInOrder(run: Pick<Run, "laps">): Lap[] {
  return run.laps
    .filter((lap) => lap.deletedAt === undefined)
    .sort((a, b) => a.n - b.n || (a.id < b.id ? -1 : 1));
}
