import type { DigestMaker } from "#db";
import type { Preferences } from "#domain";
import { type BestCandidate, isWholeDigest, methodVersion, type SessionDigest, sessionDigest } from "#stats";

/** How the digests of a logbook are made under the driver's choices; other choices make the old ones stale. */
export function digestMaker(preferences: Preferences): DigestMaker<SessionDigest> {
  const { settlingLaps, displayDecimals } = preferences;
  return {
    methodVersion: `${methodVersion}/${settlingLaps}/${displayDecimals}`,
    make: (session, runs) => sessionDigest(session, runs, preferences),
    isWhole: isWholeDigest,
    bestKeyOf: (digest) => fastestCandidate(digest)?.ms,
  };
}

/** Of the times of a session that may be a best the one that can have been the fastest, were its missing digits noughts. */
export function fastestCandidate({ bestCandidates }: SessionDigest): BestCandidate | undefined {
  return bestCandidates.reduce<BestCandidate | undefined>(
    (best, one) => (best === undefined || one.ms < best.ms ? one : best),
    undefined,
  );
}
