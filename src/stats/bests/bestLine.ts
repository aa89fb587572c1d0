import type { BestCandidate } from "./bestCandidates.ts";
import { stepsOf } from "./fastestOf.ts";
import { mayTakeBest } from "./mayTakeBest.ts";

/**
 * The personal-best line of candidates from any number of sessions of one page: those that are steps, in time order. What
 * a warm-up or a drill brought is a step from the page's second session with a best on.
 */
export function bestLine(candidates: readonly BestCandidate[]): BestCandidate[] {
  return stepsOf(maybeBests(candidates));
}

/** Those of the candidates that may stand on the line, whatever they beat. */
export function maybeBests(candidates: readonly BestCandidate[]): BestCandidate[] {
  const first = candidates
    .filter(({ kind }) => mayTakeBest(kind, false))
    .reduce<BestCandidate | undefined>((one, other) => (one && one.at <= other.at ? one : other), undefined);
  if (first === undefined) return [];
  const isLater = ({ sessionId, at }: BestCandidate) => sessionId !== first.sessionId && at > first.at;
  return candidates.filter((one) => mayTakeBest(one.kind, isLater(one)));
}
