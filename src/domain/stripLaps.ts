import { lapsInOrder } from "./lapSets.ts";
import { type Remark, type RemarkKind, remarkToTell } from "./remarks.ts";
import type { Id, Run, Surface } from "./rows.ts";
import { standsApart } from "./standsApart.ts";

/** A lap as a strip of laps shows it. Only its name and its time must be known: a strip may be of other times too. */
export interface StripLap {
  readonly id: Id;
  /** What it is called when it is read out: "Lap 3", "Run 2, lap 3". */
  readonly name: string;
  /** Absent where it has no time. */
  readonly ms?: number;
  readonly decimals?: number | undefined;
  readonly remarks?: readonly Remark[];
  /** Place of its run in the strip, from 0: a gap parts the laps of two runs. */
  readonly run?: number;
  readonly isFromMemory?: boolean;
  /** Absent means dry. */
  readonly surface?: Surface;
  /** Of a run that is measured against nothing: a warm-up, a drill, a guest's. */
  readonly isApart?: boolean;
  /** The driver took it back: "not my PB". */
  readonly isNotBest?: boolean | undefined;
  /** It holds the PB. */
  readonly isBest?: boolean;
}

/** What a lap of a strip is drawn as. */
export type StripMark = RemarkKind | "noTime" | "plain";

/** The mark of a lap: that of the remark that decides where it counts; without a time a cross, unless it left or came in. */
export function stripMark({ ms, remarks = [] }: Pick<StripLap, "ms" | "remarks">): StripMark {
  const told = remarkToTell(remarks);
  if (told === "out" || told === "in") return told;
  return ms === undefined ? "noTime" : (told ?? "plain");
}

/** A run of a strip, and the number that it goes by. */
interface RunOfStrip {
  readonly run: Run;
  readonly number: number;
}

/**
 * The laps of runs as a strip shows them, in order, deleted ones left out.
 * @param bests laps to be told as PBs
 * @param isOneRun the strip is of this run alone, so that its laps need not name it
 */
export function stripLaps(
  runs: readonly RunOfStrip[],
  bests: ReadonlySet<Id> = new Set(),
  isOneRun = false,
): StripLap[] {
  return runs.flatMap(({ run, number }, place) => {
    const apart = standsApart(run);
    return lapsInOrder(run).map(
      (lap, index): StripLap => ({
        id: lap.id,
        name: isOneRun ? `Lap ${index + 1}` : `Run ${number}, lap ${index + 1}`,
        ...(lap.ms !== undefined && { ms: lap.ms }),
        decimals: lap.decimals,
        remarks: lap.remarks,
        run: place,
        isFromMemory: lap.source === "memory",
        surface: run.surface,
        isApart: apart !== undefined && apart !== "wet",
        isNotBest: lap.isNotBest,
        isBest: bests.has(lap.id),
      }),
    );
  });
}
