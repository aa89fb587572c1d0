import { type Figure, known } from "#domain";
import { requireNumber } from "#numbers";
import { futureLevels } from "../level/futureLevels.ts";
import { levelEnd } from "../level/levelModel.ts";
import { type PracticeQuestion, requireSessions } from "../weeks/history.ts";

/** Kinds of target that have a forecast. */
export type ForecastKind = "best" | "median";

/**
 * Draws of the figure a target is about, one array for each session to come: of session medians, or of session bests,
 * on which the same model of the level is run. Our methods, §6.
 * @returns a reason with fewer than 2 sessions
 * @throws RangeError for a value that is not finite, naming it
 */
export function futureFigures(
  question: PracticeQuestion,
  kind: ForecastKind,
): Figure<readonly Float64Array[]> {
  const { history, future = [], events, seed, draws } = question;
  requireNumber(seed, "seed");
  requireSessions(history, future);
  const sessions = kind === "median" ? history : history.map((past) => ({ ...past, medianMs: past.bestMs }));
  const end = levelEnd({ sessions, events });
  if (!end.known) return end;
  return known(futureLevels(end.value, future, seed, draws).medians);
}
