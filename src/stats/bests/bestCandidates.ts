import { latestMs } from "#domain";
import type { PlacedLap, SessionLaps } from "../laps/sessionLaps.ts";

/** A time that may be a step of the personal-best line. */
export interface BestCandidate {
  /** The lap's id; of a summary run the run's. */
  readonly lapId: string;
  readonly runId: string;
  readonly isSummary: boolean;
  readonly at: number;
  readonly ms: number;
  readonly decimals: number;
  /** The driver confirmed it as odd. */
  readonly isOdd?: true | undefined;
}

/**
 * The laps of a session that can be a step of any personal-best line: those whose latest possible time is below that
 * of every clean lap before them in the session. A summary run stands where its run does.
 */
export function bestCandidates(
  session: Pick<SessionLaps, "runs" | "laps">,
  startedAt: number,
): BestCandidate[] {
  const candidates: BestCandidate[] = [];
  let bound = Number.POSITIVE_INFINITY;
  let at = startedAt;
  const offer = (candidate: BestCandidate) => {
    if (latestMs(candidate) >= bound) return;
    bound = latestMs(candidate);
    candidates.push(candidate);
  };
  session.runs.forEach((run, index) => {
    const laps = session.laps.filter((placed) => placed.run === index);
    for (const placed of laps) {
      at = placed.at;
      if (placed.mayBeBest) offer(candidateOf(placed, run.id));
    }
    const { bestMs, bestDecimals = 3, isOdd } = run.summary ?? {};
    if (bestMs === undefined) return;
    const best = { lapId: run.id, runId: run.id, isSummary: true, at, ms: bestMs, decimals: bestDecimals };
    offer(isOdd ? { ...best, isOdd } : best);
  });
  return candidates;
}

function candidateOf(placed: PlacedLap, runId: string): BestCandidate {
  return {
    lapId: placed.lap.id,
    runId,
    isSummary: false,
    at: placed.at,
    ms: placed.lap.ms as number,
    decimals: placed.lap.decimals ?? 3,
    ...(placed.lap.isOdd && { isOdd: true }),
  };
}
