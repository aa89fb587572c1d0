import type { Id } from "#domain";
import { pageLevel } from "../combo/pageLevel.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { pageHistory } from "../period/pageHistory.ts";

/**
 * How far the level has moved since a session, ms: below 0 is faster now.
 * @param page digests of the page, in any order
 * @param driven those of the combo on all its pages
 * @returns a function of the session, undefined where no level was known after it
 */
export function levelSince(
  page: readonly SessionDigest[],
  driven: readonly SessionDigest[],
): (sessionId: Id) => number | undefined {
  const history = pageHistory(page, driven);
  const level = pageLevel(history);
  return (sessionId) => {
    const index = history.findIndex((session) => session.sessionId === sessionId);
    const [now, then] = [
      level.after(history.length - 1)?.mid,
      index < 0 ? undefined : level.after(index)?.mid,
    ];
    return now === undefined || then === undefined ? undefined : now - then;
  };
}
