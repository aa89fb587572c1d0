import { known, type LapCounts, type LapPlace, lapPlaces, unknown } from "#domain";
import type { RunFinding, RunReport } from "#stats";

/** Counts with the places given, adding up. */
export function someCounts(places: Partial<Record<LapPlace, number>>): LapCounts {
  const counts = Object.fromEntries(lapPlaces.map((place) => [place, places[place] ?? 0]));
  const driven = lapPlaces.reduce((sum, place) => sum + (places[place] ?? 0), 0);
  return { ...(counts as Record<LapPlace, number>), driven };
}

/** A run of eight pace laps with the finding and the figures given. */
export function aReport(finding: RunFinding, fields: Partial<RunReport> = {}): RunReport {
  return {
    isGuest: false,
    counts: someCounts({ pace: 8 }),
    isPace: true,
    laps: 8,
    best: known({ ms: 83_704, decimals: 3, lapId: "lap" }),
    usual: known(84_100),
    usualDecimals: 3,
    isUsualGiven: false,
    scatter: unknown({ needs: 5, of: "pace lap", has: 3 }),
    trend: unknown({ needs: 6, of: "pace lap", has: 3 }),
    flyingLaps: 8,
    mistakes: 0,
    isUntidy: false,
    againstRunBefore: unknown({ because: "no pace run before" }),
    againstTarget: unknown({ because: "no target" }),
    againstBest: unknown({ because: "no PB before" }),
    firstBest: undefined,
    bestTargetReached: undefined,
    pointedAt: [],
    ...fields,
    finding,
  };
}
