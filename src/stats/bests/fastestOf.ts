import type { BestCandidate } from "./bestCandidates.ts";
import { personalBests } from "./personalBests.ts";

/** The best lap of one run or one session for itself, whatever kind of run; the first of those that may be equal. */
export function fastestOf(candidates: readonly BestCandidate[]): BestCandidate | undefined {
  return stepsOf(candidates).at(-1);
}

/** The running best of candidates in time order. */
export function stepsOf(candidates: readonly BestCandidate[]): BestCandidate[] {
  const byId = new Map(candidates.map((candidate) => [candidate.lapId, candidate]));
  const steps = personalBests(
    candidates.map(({ lapId, at, ms, decimals }) => ({ id: lapId, at, ms, decimals, remarks: [] })),
  );
  return steps.flatMap((step) => byId.get(step.lapId) ?? []);
}
