import { type Id, isMeasure, type Run } from "#domain";
import { medianOfSorted } from "#numbers";
import type { Known } from "./context.ts";

type Kind = Pick<Run, "kind" | "effort" | "surface" | "guest">;

/** Whether laps of two runs are usual for one another: the same driver, surface and kind, both at pace or neither. */
export function isAlike(a: Kind, b: Kind): boolean {
  return (
    a.kind === b.kind &&
    a.surface === b.surface &&
    isBrisk(a) === isBrisk(b) &&
    (a.guest === undefined) === (b.guest === undefined)
  );
}

const isBrisk = ({ effort }: Kind) => effort === "full" || effort === "brisk";

/** Rows never change, so each is gone through once and not at every lap. */
const measured = new WeakMap<Run, readonly number[]>();

function measuresOfRun(run: Run): readonly number[] {
  const found = measured.get(run);
  if (found !== undefined) return found;
  const times = run.laps.flatMap((lap) => (lap.deletedAt === undefined && isMeasure(lap) ? [lap.ms] : []));
  measured.set(run, times);
  return times;
}

/** Times of the laps of runs that others are measured by, sorted. */
export function measuresOf(runs: readonly Run[]): number[] {
  return runs.flatMap(measuresOfRun).sort((a, b) => a - b);
}

/** Usual lap of each combo that has one. */
function usualOfCombos(runs: readonly Run[]): number[] {
  const combos = new Map<Id, Run[]>();
  for (const run of runs) combos.set(run.comboId, [...(combos.get(run.comboId) ?? []), run]);
  return [...combos.values()].flatMap((own) => medianOfSorted(measuresOf(own)) ?? []);
}

/** Runs outside a run, from near to far. */
export interface RunsAround {
  /** Other runs of its session. */
  readonly session: readonly Run[];
  /** Earlier runs of its page. */
  readonly page: readonly Run[];
  readonly layout: readonly Run[];
  readonly elsewhere: readonly Run[];
}

/** What laps of a run can be judged by besides those of its own kind in its session. */
export function knownFrom(run: Kind, around: RunsAround, lengthMetres: number | undefined): Known {
  const isLike = (other: Run) => isAlike(run, other);
  const others = [...around.session, ...around.page].filter((other) => !isLike(other));
  return {
    page: measuresOf(around.page.filter(isLike)),
    here: measuresOf(others),
    layout: usualOfCombos(around.layout),
    lengthMetres,
    elsewhere: usualOfCombos(around.elsewhere),
  };
}
