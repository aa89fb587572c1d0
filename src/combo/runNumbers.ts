import { type Id, lapsInOrder, type Run } from "#domain";

/** A run and the number it is called by, from 1. */
export interface NumberedRun<R> {
  readonly run: R;
  readonly number: number;
}

/** Whether a run holds anything: laps, or a summary. */
export function isDrivenRun(run: Pick<Run, "laps" | "summary">): boolean {
  return run.summary !== undefined || lapsInOrder(run).length > 0;
}

/** Whether a run holds anything, if it is no more than tries of a drill that were counted. */
export function holdsAnything(run: Pick<Run, "laps" | "summary" | "counts">): boolean {
  return isDrivenRun(run) || run.counts !== undefined;
}

/** Whether a run is open and nothing is written in it yet: what comes next may still be put into it. */
export function isUntouched(run: Pick<Run, "laps" | "summary" | "counts" | "endedAt">): boolean {
  return run.endedAt === undefined && !holdsAnything(run);
}

/** The run of an open session that is being driven: the last one that has not been ended. */
export function currentRun(runs: readonly Run[]): Run | undefined {
  return runs.findLast((run) => run.endedAt === undefined && run.summary === undefined);
}

type NumberableRun = Pick<Run, "id" | "n" | "laps" | "summary" | "counts">;

/**
 * What the runs of a session are called by, everywhere: their place among those that hold laps or counts. A run that was emptied has
 * no number, and those after it close up; a guest's counts.
 * @param runs of one session, without deleted ones, in any order
 * @param current the run being driven is there before its first lap
 * @returns in order
 */
export function numberedRuns<R extends NumberableRun>(
  runs: readonly R[],
  current?: Pick<Run, "id">,
): NumberedRun<R>[] {
  return runPlaces(runs, [], current).flatMap(({ run, number }) =>
    run === undefined ? [] : [{ run, number }],
  );
}

/**
 * The same with places for runs that are there and cannot be read, which have a number and no run: those after them keep
 * theirs.
 */
export function runPlaces<R extends NumberableRun>(
  runs: readonly R[],
  gaps: readonly { readonly id: Id; readonly n: number }[],
  current?: Pick<Run, "id">,
): NumberedRun<R | undefined>[] {
  const shown = runs.filter((run) => run.id === current?.id || holdsAnything(run));
  const places: readonly { readonly run: R | undefined; readonly id: Id; readonly n: number }[] = [
    ...shown.map((run) => ({ run, id: run.id, n: run.n })),
    ...gaps.map((gap) => ({ run: undefined, ...gap })),
  ];
  return places
    .toSorted((a, b) => a.n - b.n || (a.id < b.id ? -1 : 1))
    .map(({ run }, index) => ({ run, number: index + 1 }));
}

/**
 * What one run is called by; an emptied or deleted one by the place it would have.
 * @param runs runs of its session, without deleted ones, in any order
 */
export function runNumber(run: Run, runs: readonly Run[]): number {
  const all = runs.some(({ id }) => id === run.id) ? runs : [...runs, run];
  return numberedRuns(all, run).find((one) => one.run.id === run.id)?.number ?? 0;
}
