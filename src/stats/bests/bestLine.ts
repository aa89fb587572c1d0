import type { BestCandidate } from "./bestCandidates.ts";
import { personalBests } from "./personalBests.ts";

/**
 * The personal-best line of candidates from any number of sessions of one page: those that are steps, in time order.
 */
export function bestLine(candidates: readonly BestCandidate[]): BestCandidate[] {
  const byId = new Map(candidates.map((candidate) => [candidate.lapId, candidate]));
  const steps = personalBests(
    candidates.map(({ lapId, at, ms, decimals }) => ({ id: lapId, at, ms, decimals, remarks: [] })),
  );
  return steps.flatMap((step) => byId.get(step.lapId) ?? []);
}
