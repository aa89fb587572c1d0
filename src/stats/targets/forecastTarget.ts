import { type Figure, known, unknown } from "#domain";
import { requireNumber } from "#numbers";
import { type FutureSession, requireSessions } from "../weeks/history.ts";
import { type CurveSummary, type PracticeQuestion, summariseCurve } from "../weeks/practiceCurve.ts";
import { type ExpectedSession, expectedSession } from "./expectedSession.ts";
import { firstReached } from "./firstReached.ts";
import { type ForecastKind, futureFigures } from "./futureFigures.ts";

export interface TargetForecast extends CurveSummary {
  /** Share of the futures in which a planned session reaches the target, 0 to 1. */
  readonly chance: number;
  readonly expectedSession: ExpectedSession;
}

/** A forecast's question: the practice so far, the sessions planned before the date, and the target. */
export interface TargetQuestion extends PracticeQuestion {
  readonly future: readonly FutureSession[];
  readonly targetMs: number;
  readonly kind: ForecastKind;
}

/**
 * Chance that one of the planned sessions reaches a target, from 2,000 seeded draws of the practice curve and, for a
 * best lap, of the bests about it. Our methods, §6. Random numbers belong to (seed, draw, session), so a later date,
 * more sessions or an easier target never lowers a chance.
 * @returns a reason with fewer than 2 sessions, or when a past session has reached the target already
 * @throws RangeError for a value that is not finite, naming it
 */
export function forecastTarget(question: TargetQuestion): Figure<TargetForecast> {
  const { history, targetMs, kind } = question;
  requireNumber(targetMs, "targetMs");
  requireSessions(history);
  const reached = history.some((past) => (kind === "best" ? past.bestMs : past.medianMs) <= targetMs);
  if (reached) return unknown("already reached");
  const futures = futureFigures(question, kind);
  if (!futures.known) return futures;
  const { posterior, draws, figures } = futures.value;
  const first = firstReached(figures, targetMs);
  const successes = first.reduce((sum, session) => sum + (session < Infinity ? 1 : 0), 0);
  return known({
    chance: first.length === 0 ? 0 : successes / first.length,
    expectedSession: expectedSession(first),
    ...summariseCurve(question, posterior, draws),
  });
}
