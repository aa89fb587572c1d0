import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { BestCandidate } from "./bestCandidates.ts";
import { bestLine, maybeBests } from "./bestLine.ts";
import type { DatedBest } from "./datedBest.ts";

/**
 * The personal-best line of sessions of one page, each step with its session and day.
 * @param page digests in any order
 */
export function datedBests(page: readonly SessionDigest[]): DatedBest[] {
  return dated(bestLine(page.flatMap(({ bestCandidates }) => bestCandidates)), page);
}

/** All laps of those sessions that may stand on the line, whatever they beat, each with its session and day. */
export function datedMaybeBests(page: readonly SessionDigest[]): DatedBest[] {
  return dated(maybeBests(page.flatMap(({ bestCandidates }) => bestCandidates)), page);
}

function dated(bests: readonly BestCandidate[], page: readonly SessionDigest[]): DatedBest[] {
  const sessionOf = new Map(
    page.flatMap((digest) => digest.bestCandidates.map((candidate) => [candidate.lapId, digest] as const)),
  );
  return bests.flatMap((best) => {
    const digest = sessionOf.get(best.lapId);
    return digest === undefined ? [] : [{ ...best, sessionId: digest.sessionId, date: digest.date }];
  });
}
