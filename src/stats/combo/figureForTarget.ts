import type { Target } from "#domain";
import { bestLine } from "../bests/bestLine.ts";
import { inSet } from "../digest/lapsOfDigest.ts";
import { NO_TIME, type SessionDigest } from "../digest/sessionDigest.ts";
import { bestInARow } from "../pace/bestInARow.ts";

/**
 * The figure that stands against a target now, in the target's unit: for `best` the personal best of the page; for
 * `meanOf` the best mean of as many clean laps in a row of one run; for `median`, `scatter` and `cleanShare`
 * (thousandths) that of the latest session that has one, from five laps up.
 * @param digests of the combo's present page, in any order
 * @returns undefined where no session gives the figure
 */
export function figureForTarget(
  target: Pick<Target, "kind" | "laps">,
  digests: readonly SessionDigest[],
): number | undefined {
  const latest = digests.toSorted((a, b) => b.startedAt - a.startedAt);
  switch (target.kind) {
    case "best":
      return bestLine(digests.flatMap((digest) => digest.bestCandidates)).at(-1)?.ms;
    case "meanOf":
      return bestMeanOf(digests, target.laps ?? 1);
    case "median":
      return firstKnown(latest, ({ pace }) => pace.medianForTrend);
    case "scatter":
      return firstKnown(latest, ({ pace: { consistency } }) =>
        consistency.known ? consistency.value.scatterMs : undefined,
      );
    case "cleanShare":
      return firstKnown(latest, ({ clean, timed }) => (timed < 5 ? undefined : (1000 * clean) / timed));
  }
}

function firstKnown(
  digests: readonly SessionDigest[],
  figure: (digest: SessionDigest) => number | undefined,
): number | undefined {
  for (const digest of digests) {
    const value = figure(digest);
    if (value !== undefined) return value;
  }
  return undefined;
}

function bestMeanOf(digests: readonly SessionDigest[], count: number): number | undefined {
  return bestInARow(digests.flatMap(cleanRuns), count)?.meanMs;
}

/** The laps of each run: the time of one that may be a best, undefined for any other. */
function cleanRuns(digest: SessionDigest): (number | undefined)[][] {
  const byRun: (number | undefined)[][] = [];
  const mayBeBest = inSet(digest, "bests");
  digest.times.forEach((ms, lap) => {
    const run = digest.runs[lap] ?? 0;
    byRun[run] ??= [];
    byRun[run].push(ms !== NO_TIME && mayBeBest(lap) ? ms : undefined);
  });
  return byRun.filter((run) => run !== undefined);
}
