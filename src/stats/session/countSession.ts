import type { Run, Session } from "#domain";
import { type BestCandidate, bestCandidates } from "../bests/bestCandidates.ts";
import { fastestOf } from "../bests/fastestOf.ts";
import type { Choices } from "../laps/choices.ts";
import { sessionLaps } from "../laps/sessionLaps.ts";

/** What is counted of a session without working out a figure. */
export interface CountedSession {
  /** Laps driven, written down or not. */
  readonly laps: number;
  /** Clean laps of runs written lap by lap. */
  readonly clean: number;
  readonly best: BestCandidate | undefined;
}

/** A session's laps, clean laps and best as its digest has them, for who needs no more: it takes a fraction of the time. */
export function countSession(
  session: Pick<Session, "startedAt">,
  runs: readonly Run[],
  choices: Choices,
): CountedSession {
  const sorted = sessionLaps(session, runs, choices);
  const best = fastestOf(bestCandidates(sorted, session.startedAt));
  return { laps: sorted.counts.driven, clean: sorted.clean, best };
}
