import { latestMs, type Run, type RunKind } from "#domain";
import type { PlacedLap, SessionLaps } from "../laps/sessionLaps.ts";
import { mayTakeBest } from "./mayTakeBest.ts";

/** A time that may be a step of the personal-best line. */
export interface BestCandidate {
  /** The lap's id; of a summary run the run's. */
  readonly lapId: string;
  readonly runId: string;
  readonly sessionId: string;
  /** Kind of its run. */
  readonly kind: RunKind;
  readonly isSummary: boolean;
  readonly at: number;
  readonly ms: number;
  readonly decimals: number;
  /** The driver confirmed it as odd. */
  readonly isOdd?: true | undefined;
}

type Time = Pick<BestCandidate, "ms" | "decimals">;

/**
 * The laps of a session that can be a step of any personal-best line: those whose latest possible time is below that
 * of every clean lap before them in the session. A lap of a warm-up or a drill keeps none of the others out, because it
 * may be no step itself. A summary run stands where its run does.
 */
export function bestCandidates(
  session: Pick<SessionLaps, "runs" | "laps">,
  startedAt: number,
): BestCandidate[] {
  const candidates: BestCandidate[] = [];
  let bound = Number.POSITIVE_INFINITY;
  let boundOfAll = Number.POSITIVE_INFINITY;
  let at = startedAt;
  // Most laps are none, so one is put together only when it is.
  const offer = (kind: RunKind, time: Time, make: () => BestCandidate) => {
    const latest = latestMs(time);
    const isSure = mayTakeBest(kind, false);
    if (latest >= (isSure ? bound : boundOfAll)) return;
    if (isSure) bound = latest;
    boundOfAll = Math.min(boundOfAll, latest);
    candidates.push(make());
  };
  session.runs.forEach((run, index) => {
    const laps = session.laps.filter((placed) => placed.run === index);
    for (const placed of laps) {
      at = placed.at;
      if (placed.mayBeBest) offer(run.kind, timeOf(placed), () => candidateOf(placed, run));
    }
    const { bestMs, bestDecimals = 3, isOdd } = run.summary ?? {};
    if (bestMs === undefined) return;
    const best = { ...placeOf(run), lapId: run.id, isSummary: true, at, ms: bestMs, decimals: bestDecimals };
    offer(run.kind, best, () => (isOdd ? { ...best, isOdd } : best));
  });
  return candidates;
}

const timeOf = ({ lap }: PlacedLap): Time => ({ ms: lap.ms as number, decimals: lap.decimals ?? 3 });

const placeOf = ({ id, sessionId, kind }: Run) => ({ runId: id, sessionId, kind });

function candidateOf(placed: PlacedLap, run: Run): BestCandidate {
  return {
    ...placeOf(run),
    lapId: placed.lap.id,
    isSummary: false,
    at: placed.at,
    ...timeOf(placed),
    ...(placed.lap.isOdd && { isOdd: true }),
  };
}
