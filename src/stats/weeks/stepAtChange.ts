import { type Figure, known, unknown } from "#domain";
import { stepVariance } from "../level/advance.ts";
import { levelPosterior } from "../level/levelPosterior.ts";
import type { LevelSession } from "../level/levelSeries.ts";
import { mixtureQuantile } from "../level/normalMixture.ts";
import { smoothLevels } from "../level/smoothLevels.ts";
import { lapsForMedian } from "../pace/lapsForMedian.ts";
import type { SessionEvent } from "./sessionEvents.ts";

/** The shift of the level at a change, in ms; below 0 is faster. */
export interface StepAtChange {
  readonly estimate: number;
  /** The 90 % interval. */
  readonly low: number;
  readonly high: number;
  /** More than 3 % of the lap: usually mixed-up combos or conditions rather than a change of settings. */
  readonly isQuestioned: boolean;
}

const LEAST_EACH_SIDE = 2;
const QUESTIONED_SHARE = 0.03;

/**
 * Before and after a change that was not a planned test: the jump of the level at it, beside the trend that practice
 * makes. Our methods, §7. The unit is the session. Not a test: the driver was also practising.
 * @param afterSession number of sessions before the change
 * @param history sessions of one page, oldest first
 * @param events other dated events (breaks, other changes)
 * @returns the median of the step with its 90 % interval, or a reason with fewer than 2 sessions on a side
 * @throws RangeError for a value that is not finite, naming it
 */
export function stepAtChange({
  afterSession,
  history,
  events = [],
}: {
  readonly afterSession: number;
  readonly history: readonly LevelSession[];
  readonly events?: readonly SessionEvent[];
}): Figure<StepAtChange> {
  const after = history.length - afterSession;
  const lacking = { needs: LEAST_EACH_SIDE, of: "session", each: lapsForMedian } as const;
  if (afterSession < LEAST_EACH_SIDE)
    return unknown({ ...lacking, has: afterSession, where: "before the change" });
  if (after < LEAST_EACH_SIDE)
    return unknown({ ...lacking, has: Math.max(0, after), where: "after the change" });
  const posterior = levelPosterior({
    sessions: history,
    events: [{ kind: "step", afterSession }, ...events],
  });
  const { from, usual } = posterior.series;
  if (afterSession <= from) return unknown({ because: "change too long ago" });
  const { stepMeans, stepVariances } = smoothLevels(posterior, {
    before: afterSession - from,
    variance: stepVariance(1),
  });
  const mixture = {
    weights: posterior.weights,
    means: stepMeans,
    deviations: stepVariances.map((variance) => Math.sqrt(variance)),
  };
  const [low = 0, estimate = 0, high = 0] = [0.05, 0.5, 0.95].map(
    (share) => usual * mixtureQuantile(mixture, share),
  );
  return known({ estimate, low, high, isQuestioned: Math.abs(estimate) > QUESTIONED_SHARE * usual });
}
