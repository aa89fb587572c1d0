import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { DatedBest } from "./datedBest.ts";

/**
 * The best clean lap of each session, whether it was a step of the personal-best line or not.
 * @param digests in the order wanted
 * @returns nothing for a session without a clean lap
 */
export function sessionBests(digests: readonly SessionDigest[]): DatedBest[] {
  return digests.flatMap(({ bestClean, sessionId, date }) =>
    bestClean === undefined ? [] : [{ ...bestClean, sessionId, date }],
  );
}
