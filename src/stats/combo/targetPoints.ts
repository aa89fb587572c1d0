import type { TargetPoint } from "#combo";
import { latestMs, leastForSpread, type Target } from "#domain";
import { VERY_LIKELY } from "#numbers";
import { datedMaybeBests } from "../bests/datedBests.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { LevelKnown } from "../level/levelKnown.ts";
import { bestInARow } from "../pace/bestInARow.ts";
import type { PageSession } from "../period/pageHistory.ts";
import { exactRuns } from "./exactRuns.ts";

/** The sessions of one page that targets are judged by. */
export interface TargetFacts {
  /** Digests of the page in time order, none later than the day asked about. */
  readonly page: readonly SessionDigest[];
  /** Those of them with a median, from `pageHistory`, and the level after each. */
  readonly history: readonly PageSession[];
  readonly level: LevelKnown;
}

/**
 * What the sessions of a page say about a target, oldest first. A time counts by its latest possible value. For a usual lap
 * it is the level as it was known then; for a scatter or a share of clean laps the session itself.
 */
export function targetPoints(target: Target, { page, history, level }: TargetFacts): TargetPoint[] {
  const { value } = target;
  switch (target.kind) {
    case "best":
      // One known exactly may be there, and yet no step beyond one known to tenths.
      return datedMaybeBests(page).map((best) => ({
        date: best.date,
        at: best.at,
        isThere: latestMs(best) <= value,
        isAway: false,
      }));
    case "meanOf":
      return page.map((digest) => {
        const mean = bestInARow(exactRuns(digest), target.laps ?? 1)?.meanMs;
        return { ...when(digest), isThere: mean !== undefined && mean <= value, isAway: false };
      });
    case "median":
      return levelPoints(target, history, level);
    case "scatter":
      return page.flatMap((digest) => {
        const { consistency } = digest.pace;
        return consistency.known ? [pointOf(digest, consistency.value.scatterMs <= value)] : [];
      });
    case "cleanShare":
      return page.flatMap((digest) => {
        const { clean, timed } = digest;
        return timed < leastForSpread ? [] : [pointOf(digest, 1000 * clean >= value * timed)];
      });
  }
}

/** From the last session before it was set on: what stood earlier says nothing of it. */
function levelPoints(
  { setAt, value }: Target,
  history: readonly PageSession[],
  { chanceUnder }: LevelKnown,
): TargetPoint[] {
  const first = Math.max(
    0,
    history.findLastIndex(({ startedAt }) => startedAt < setAt),
  );
  return history.slice(first).flatMap((session, index) => {
    const chance = chanceUnder(first + index, value);
    return chance === undefined
      ? []
      : [{ ...when(session), isThere: chance >= VERY_LIKELY, isAway: chance <= 1 - VERY_LIKELY }];
  });
}

function when({ date, startedAt }: Pick<SessionDigest, "date" | "startedAt">) {
  return { date, at: startedAt };
}

function pointOf(digest: SessionDigest, isThere: boolean): TargetPoint {
  return { ...when(digest), isThere, isAway: !isThere };
}
