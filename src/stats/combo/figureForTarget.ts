import { type AskedFigure, latestMs, leastForSpread } from "#domain";
import { bestLine } from "../bests/bestLine.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { bestInARow } from "../pace/bestInARow.ts";
import { exactRuns } from "./exactRuns.ts";
import { latestUsual, type UsualLap } from "./latestUsual.ts";

/** A figure in the unit of its target, and to how many decimals of a second it is known where it is a time. */
export interface TargetFigure {
  readonly value: number;
  readonly decimals: number;
  /** Worked out by the level model: rounded, where a time that was driven is cut. */
  readonly isLevel?: true;
}

/** No level is known to a thousandth: ms a step, and decimals. */
const LEVEL_STEP = 10;
export const LEVEL_DECIMALS = 2;

/** A level as it stands against a target: to the hundredth, so that what is left to go is what is shown to be left. */
export function levelFigure(ms: number): TargetFigure {
  return { value: Math.round(ms / LEVEL_STEP) * LEVEL_STEP, decimals: LEVEL_DECIMALS, isLevel: true };
}

/** What a figure is at most: a level may lie to either side of what is shown, a time that was driven only above. */
export function atMost({ value, decimals, isLevel }: TargetFigure): number {
  return isLevel ? value : latestMs({ ms: value, decimals });
}

/**
 * The figure that stands against a target now, in the target's unit: for `best` the personal best of the page; for
 * `meanOf` the best mean of as many clean laps in a row of one run; for `median` the level, or where there is none yet the
 * usual lap of the last session that has one; for `scatter` and `cleanShare` (thousandths) that of the latest session that
 * has one, from five laps up.
 * @param page digests of the combo's page in time order
 * @param levelNow the level now, ms, where it is known
 * @returns undefined where nothing gives the figure
 */
export function figureForTarget(
  target: AskedFigure,
  page: readonly SessionDigest[],
  levelNow: () => number | undefined,
): TargetFigure | undefined {
  switch (target.kind) {
    case "best": {
      const best = bestLine(page.flatMap((digest) => digest.bestCandidates)).at(-1);
      return best && { value: best.ms, decimals: best.decimals };
    }
    case "meanOf":
      return exactly(
        bestInARow(
          page.flatMap((digest) => exactRuns(digest)),
          target.laps ?? 1,
        )?.meanMs,
      );
    case "median": {
      const level = levelNow();
      return level === undefined ? usualFigure(latestUsual(page)) : levelFigure(level);
    }
    case "scatter":
      return exactly(
        lastKnown(page, ({ pace: { consistency } }) =>
          consistency.known ? consistency.value.scatterMs : undefined,
        ),
      );
    case "cleanShare":
      return exactly(
        lastKnown(page, ({ clean, timed }) => (timed < leastForSpread ? undefined : (1000 * clean) / timed)),
      );
  }
}

/** A usual lap as it stands against a target. */
export function usualFigure(usual: UsualLap | undefined): TargetFigure | undefined {
  return usual && { value: usual.ms, decimals: usual.decimals };
}

function exactly(value: number | undefined): TargetFigure | undefined {
  return value === undefined ? undefined : { value, decimals: 3 };
}

function lastKnown(
  page: readonly SessionDigest[],
  figure: (digest: SessionDigest) => number | undefined,
): number | undefined {
  const digest = page.findLast((one) => figure(one) !== undefined);
  return digest && figure(digest);
}
