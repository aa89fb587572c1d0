import { type Figure, known, unknown } from "#domain";
import { requireNumber } from "#numbers";
import { isMostlyAssumption } from "../level/levelModel.ts";
import { type Band, bandOf } from "../weeks/bands.ts";
import { type FutureSession, type PracticeQuestion, requireSessions } from "../weeks/history.ts";
import { type ExpectedSession, expectedSession } from "./expectedSession.ts";
import { firstReached } from "./firstReached.ts";
import { type ForecastKind, futureFigures } from "./futureFigures.ts";
import { isDriven } from "./isDriven.ts";

/** How likely a target is reached, and when. */
export interface TargetChance {
  /** Share of the futures in which a planned session reaches the target, 0 to 1. */
  readonly chance: number;
  readonly expectedSession: ExpectedSession;
}

export interface TargetForecast extends TargetChance {
  /** Median and bands of the session's median, in ms, for each session to come. */
  readonly bands: readonly Band[];
  /** Fewer than four sessions: what is shown comes from the assumptions more than from the laps. */
  readonly isMostlyAssumption: boolean;
}

/** A forecast's question: the practice so far, the sessions planned before the date, and the target. */
export interface TargetQuestion extends PracticeQuestion {
  readonly future: readonly FutureSession[];
  readonly targetMs: number;
  readonly kind: ForecastKind;
}

/**
 * Chance that one of the planned sessions reaches a target, from 2,000 seeded draws of the level model. Our methods, §6.
 * That a past session has reached it says nothing against it, but for a best lap, which is driven for good. Random
 * numbers belong to (seed, draw, session), so a later date, more sessions or an easier target never lowers a chance.
 * @returns a reason with fewer than 2 sessions, or for a best lap that has been driven already
 * @throws RangeError for a value that is not finite, naming it
 */
export function forecastTarget(question: TargetQuestion): Figure<TargetForecast> {
  const { history, targetMs, kind } = question;
  requireNumber(targetMs, "targetMs");
  requireSessions(history);
  if (kind === "best" && isDriven(targetMs, history)) return unknown({ because: "already reached" });
  const medians = futureFigures(question, "median");
  if (!medians.known) return medians;
  const figures = kind === "median" ? medians : futureFigures(question, kind);
  if (!figures.known) return figures;
  return known({
    ...chanceOf(figures.value, targetMs),
    bands: medians.value.map(bandOf),
    isMostlyAssumption: isMostlyAssumption(history.length),
  });
}

/**
 * Chance and likely session of a target, read off drawn futures: for those who ask about more than one target.
 * @param figures draws of the target's figure, one array for each session to come
 */
export function chanceOf(figures: readonly Float64Array[], targetMs: number): TargetChance {
  const first = firstReached(figures, targetMs);
  const successes = first.reduce((sum, session) => sum + (session < Infinity ? 1 : 0), 0);
  return {
    chance: first.length === 0 ? 0 : successes / first.length,
    expectedSession: expectedSession(first),
  };
}
