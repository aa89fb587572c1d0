import {
  type Figure,
  isPartlyWritten,
  known,
  lapsInOrder,
  leastForSpread,
  type NotCompared,
  outOfTest,
  type RigTest,
  type Run,
  standsApart,
  unknown,
} from "#domain";
import type { Choices } from "../laps/choices.ts";
import { runTimes } from "../run/runTimes.ts";

/** What a rig test reads of one of its runs. */
export interface FigureOfRun {
  /** The figure that the test judges by, ms. */
  readonly ms: number;
  /** The usual lap of the run, whatever the figure, ms. */
  readonly usualMs: number;
}

/** A run as its test looks at it. */
export interface RunRead {
  /** Clean laps as the test counts them; 0 in a run that compares with none of the others. */
  readonly laps: number;
  readonly figure: Figure<FigureOfRun>;
}

/**
 * What a rig test reads of a run: its usual lap (the median of its clean laps), or their scatter. Laps on the way out,
 * and first laps that the driver lets settle, are left out as in any pace run. Our methods, §7.
 * @returns a reason for fewer than five such laps (for a scatter: known to all decimals), and for a run that compares with
 * none of the others: a guest's, wet, not at pace, only partly written
 */
export function testFigure(run: Run, { figure }: Pick<RigTest, "figure">, choices: Choices): RunRead {
  const because = notCompared(run);
  if (because !== undefined) return { laps: 0, figure: unknown({ because: "not compared", run: because }) };
  const { usual, scatter, laps } = runTimes(run, choices);
  if (laps < leastForSpread || !usual.known)
    return { laps, figure: unknown({ needs: leastForSpread, of: "clean lap", has: laps }) };
  if (figure !== "scatter") return { laps, figure: known({ ms: usual.value, usualMs: usual.value }) };
  if (!scatter.known) return { laps, figure: scatter };
  return { laps, figure: known({ ms: scatter.value.scatterMs, usualMs: usual.value }) };
}

function notCompared(run: Run): NotCompared | undefined {
  const apart = standsApart(outOfTest(run));
  if (apart !== undefined) return apart;
  if (run.kind === "race") return "race";
  return isPartlyWritten(run, lapsInOrder(run).length) ? "partly written" : undefined;
}
