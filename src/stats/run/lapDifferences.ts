import { isClean, type Lap, lapsInOrder, latestMs, mayBeBest, type Run, standsApart } from "#domain";
import { mayTakeBest } from "../bests/mayTakeBest.ts";

/** A best time and to how many decimals it is known. */
export interface KnownBest {
  readonly ms: number;
  readonly decimals: number;
  /** The driver confirmed it as odd: it is the best, but nothing is completed from it. */
  readonly isOdd?: true | undefined;
}

/** One lap of the ledger with its differences in ms, negative = faster; each is missing where there is nothing to compare. */
export interface LapDifferences {
  readonly lap: Lap;
  /** Place in its run, from 1. */
  readonly number: number;
  /** To the last clean lap before it in the run: after an off, a normal lap is no gain. */
  readonly toClean?: number;
  /** To the personal best as it stood when the lap was driven; in a run that stands apart only of a lap that took it. */
  readonly toBest?: number;
  /** Never in a run that stands apart. */
  readonly toTarget?: number;
  /** To how many decimals each of them is known: to those of the coarser of its two times. */
  readonly decimals: { readonly toClean: number; readonly toBest: number; readonly toTarget: number };
  /** The lap took the personal best: its latest possible value is faster than the best before it. */
  readonly isBest: boolean;
}

/**
 * The laps of a session's runs with what each was against the lap before, the personal best and the target. A lap
 * without a time ends the chain of differences to the last clean lap. The best of a summary run counts as a best.
 * @param runs runs of one session in order
 * @param best best of the page before the session, if there is one
 */
export function lapDifferences(
  runs: readonly Run[],
  best: KnownBest | undefined,
  targetMs: number | undefined,
): Map<Run["id"], LapDifferences[]> {
  let standing = best;
  return new Map(
    runs.map((run) => {
      let lastClean: KnownBest | undefined;
      const isApart = standsApart(run) !== undefined;
      const mayTake = run.guest === undefined && mayTakeBest(run.kind, best !== undefined);
      const rows = lapsInOrder(run).map((lap, index): LapDifferences => {
        const { ms, decimals: own = 3 } = lap;
        const decimals = {
          toClean: Math.min(own, lastClean?.decimals ?? 3),
          toBest: Math.min(own, standing?.decimals ?? 3),
          toTarget: own,
        };
        if (ms === undefined) {
          lastClean = undefined;
          return { lap, number: index + 1, decimals, isBest: false };
        }
        const toClean = lastClean === undefined ? undefined : ms - lastClean.ms;
        const toBest = standing === undefined ? undefined : ms - standing.ms;
        const counts = mayBeBest(lap) && mayTake;
        const isBest = counts && (standing === undefined || latestMs({ ...lap, ms }) < standing.ms);
        if (isBest) standing = { ms, decimals: own };
        if (isClean(lap)) lastClean = { ms, decimals: own };
        return {
          lap,
          number: index + 1,
          decimals,
          ...(toClean !== undefined && { toClean }),
          ...(toBest !== undefined && (isBest || !isApart) && { toBest }),
          ...(targetMs !== undefined && !isApart && { toTarget: ms - targetMs }),
          isBest,
        };
      });
      const { bestMs, bestDecimals = 3 } = run.summary ?? {};
      const isWholeBest = bestMs !== undefined && mayTake;
      if (
        isWholeBest &&
        (standing === undefined || latestMs({ ms: bestMs, decimals: bestDecimals }) < standing.ms)
      )
        standing = { ms: bestMs, decimals: bestDecimals };
      return [run.id, rows];
    }),
  );
}
