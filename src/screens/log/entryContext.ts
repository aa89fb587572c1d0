import { isPaceRun, type Layout, lapsInOrder, type Preferences, type Run, sortLaps } from "#domain";
import type { EntryContext } from "#entry";
import { median } from "#stats";

/** A best time, with what is known of its decimals. */
export interface Best {
  readonly ms: number;
  readonly decimals: number;
}

interface Known {
  /** The run being driven; undefined where none is. */
  readonly run: Run | undefined;
  /** All runs of the session. */
  readonly runs: readonly Run[];
  readonly layout: Layout;
  readonly preferences: Preferences;
  readonly pb: Best | undefined;
  readonly targetMs: number | undefined;
}

/** What is known while a lap is typed: the usual pace, the lap before, the PB, the layout. */
export function entryContext({ run, runs, layout, preferences, pb, targetMs }: Known): EntryContext {
  const paceTimes = runs.flatMap((one) =>
    sortLaps(one, preferences.settlingLaps).flatMap(({ lap, isPace }) =>
      isPace && lap.ms !== undefined ? [lap.ms] : [],
    ),
  );
  const usualMs = median(paceTimes) ?? pb?.ms;
  const last = run && lapsInOrder(run).at(-1);
  return {
    ...(usualMs !== undefined && { usualMs }),
    ...(last?.ms !== undefined && { previousMs: last.ms, previousDecimals: last.decimals ?? 3 }),
    ...(pb && { pbMs: pb.ms, pbDecimals: pb.decimals }),
    ...(targetMs !== undefined && { targetMs }),
    relativeTo: preferences.relativeTo,
    displayDecimals: preferences.displayDecimals,
    ...(layout.sectors !== undefined && { sectors: layout.sectors }),
    ...(layout.corners.length > 0 && { corners: layout.corners.length }),
    // Laps of drills and wet runs are slow on purpose: no lap there is asked about for being slow.
    paceTimes: run !== undefined && isPaceRun(run) ? paceTimes : [],
    isPractice: run?.guest === undefined,
    isPaceRun: run !== undefined && isPaceRun(run),
  };
}
