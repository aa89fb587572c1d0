import { type Figure, known } from "#domain";
import type { CurveDraws } from "../weeks/curveDraws.ts";
import type { CurvePosterior } from "../weeks/curvePosterior.ts";
import { drawCurve, type PracticeQuestion } from "../weeks/practiceCurve.ts";
import { futureBests } from "./futureBests.ts";

/** Kinds of target that have a forecast. */
export type ForecastKind = "best" | "median";

/** What each session to come may bring. */
export interface FutureFigures {
  readonly posterior: CurvePosterior;
  readonly draws: CurveDraws;
  /** Best laps or medians, one array of draws for each session to come. */
  readonly figures: readonly Float64Array[];
}

/**
 * Draws of the figure a target is about: the session's median, or its best lap.
 * @returns a reason with fewer than 2 sessions
 */
export function futureFigures(question: PracticeQuestion, kind: ForecastKind): Figure<FutureFigures> {
  const drawn = drawCurve(question);
  if (!drawn.known) return drawn;
  const { posterior, draws } = drawn.value;
  if (kind === "median") return known({ posterior, draws, figures: draws.medians });
  const figures = futureBests(question.history, posterior.usual, draws, question.seed);
  return known({ posterior, draws, figures });
}
