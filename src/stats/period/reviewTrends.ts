import { type Figure, leastForSpread } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { lapsForMedian } from "../pace/lapsForMedian.ts";
import { type SessionTrend, sessionTrend, type TrendPoint } from "./sessionTrend.ts";

/** Half a percent of a lap is worth knowing about; a spread has to change by a quarter. */
const MEDIAN_WORTH_SHOWING = 0.005;
const SPREAD_WORTH_SHOWING = 0.25;

/**
 * The trends of the usual lap and of the scatter over sessions.
 * @param now sessions of the period, oldest first
 * @param page all sessions of the page, for the laps driven before each
 */
export function reviewTrends(
  now: readonly SessionDigest[],
  page: readonly SessionDigest[],
): { readonly trend: Figure<SessionTrend>; readonly steadiness: Figure<SessionTrend> } {
  let driven = 0;
  const middleOf = new Map(
    page.map((digest) => {
      driven += digest.timedDriven;
      return [digest.sessionId, driven - digest.timedDriven / 2] as const;
    }),
  );
  const pointsOf = (figure: (digest: SessionDigest) => number | undefined) =>
    now.flatMap((digest): TrendPoint[] => {
      const value = figure(digest);
      const laps = middleOf.get(digest.sessionId) ?? 0;
      return value === undefined ? [] : [{ startedAt: digest.startedAt, laps, value }];
    });
  return {
    trend: sessionTrend(
      pointsOf(({ pace }) => pace.medianForTrend),
      { of: "session", each: lapsForMedian },
      MEDIAN_WORTH_SHOWING,
    ),
    steadiness: sessionTrend(
      pointsOf(({ pace: { consistency } }) => (consistency.known ? consistency.value.percent : undefined)),
      { of: "session", each: { needs: leastForSpread, of: "exact pace lap" } },
      SPREAD_WORTH_SHOWING,
    ),
  };
}
