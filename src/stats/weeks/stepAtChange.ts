import { type Figure, known, unknown } from "#domain";
import { lapsForMedian } from "../pace/lapsForMedian.ts";
import { rangeOf } from "./bands.ts";
import { drawCurve, type PracticeQuestion } from "./practiceCurve.ts";

/** The shift of the session medians at a change, in ms; below 0 is faster. */
export interface StepAtChange {
  readonly estimate: number;
  /** The 90 % interval. */
  readonly low: number;
  readonly high: number;
  /** More than 10 % of the lap: usually mixed-up combos rather than a change of settings. */
  readonly isQuestioned: boolean;
}

const leastEachSide = 2;
const questionedShare = 0.1;
const draws = 4000;

/**
 * Before and after a change that was not a planned test: the step at it in the practice curve, which learning has
 * been taken out of. Our methods, §7. The unit is the session. Not a test: the driver was also practising.
 * @param afterSession number of sessions before the change
 * @param events other dated events (breaks, other changes)
 * @returns the median of the step's posterior with its 90 % interval (4,000 seeded draws), or a reason with fewer
 * than 2 sessions on a side
 * @throws RangeError for a value that is not finite, naming it
 */
export function stepAtChange({
  afterSession,
  history,
  events = [],
  seed,
}: Pick<PracticeQuestion, "history" | "events" | "seed"> & {
  readonly afterSession: number;
}): Figure<StepAtChange> {
  const after = history.length - afterSession;
  const lacking = { needs: leastEachSide, of: "session", each: lapsForMedian } as const;
  if (afterSession < leastEachSide)
    return unknown({ ...lacking, has: afterSession, where: "before the change" });
  if (after < leastEachSide)
    return unknown({ ...lacking, has: Math.max(0, after), where: "after the change" });
  const drawn = drawCurve({ history, seed, draws, events: [{ kind: "step", afterSession }, ...events] });
  if (!drawn.known) return drawn;
  const { low, mid, high } = rangeOf(drawn.value.draws.events[0] ?? []);
  return known({
    estimate: mid,
    low,
    high,
    isQuestioned: Math.abs(mid) > questionedShare * drawn.value.posterior.usual,
  });
}
