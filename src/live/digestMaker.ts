import type { DigestMaker } from "#db";
import { latestMs, type Preferences } from "#domain";
import { isWholeDigest, methodVersion, type SessionDigest, sessionDigest } from "#stats";

/** How the digests of a logbook are made under the driver's choices; other choices make the old ones stale. */
export function digestMaker(preferences: Preferences): DigestMaker<SessionDigest> {
  const { settlingLaps, displayDecimals } = preferences;
  return {
    methodVersion: `${methodVersion}/${settlingLaps}/${displayDecimals}`,
    make: (session, runs) => sessionDigest(session, runs, preferences),
    isWhole: isWholeDigest,
    bestKeyOf: ({ bestClean }) => bestClean && latestMs(bestClean),
  };
}
