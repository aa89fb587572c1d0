import type { SessionDigest } from "../digest/sessionDigest.ts";
import { bestLine } from "./bestLine.ts";
import type { DatedBest } from "./datedBest.ts";

/**
 * The personal-best line of sessions of one page, each step with its session and day.
 * @param page digests in any order
 */
export function datedBests(page: readonly SessionDigest[]): DatedBest[] {
  const sessionOf = new Map(
    page.flatMap((digest) => digest.bestCandidates.map((candidate) => [candidate.lapId, digest] as const)),
  );
  return bestLine(page.flatMap((digest) => digest.bestCandidates)).flatMap((best) => {
    const digest = sessionOf.get(best.lapId);
    return digest === undefined ? [] : [{ ...best, sessionId: digest.sessionId, date: digest.date }];
  });
}
