import { type Figure, known, unknown } from "#domain";
import { requireNumber } from "#numbers";
import { needs } from "../sample/needs.ts";
import { type Band, bandOf, type Range, rangeOf } from "./bands.ts";
import { type CurveDraws, curveDraws, usualDraws } from "./curveDraws.ts";
import { type CurvePosterior, curvePosterior } from "./curvePosterior.ts";
import { type FutureSession, type PastSession, placeOf, requireSessions } from "./history.ts";
import type { SessionEvent } from "./sessionEvents.ts";

/** How far practice takes a driver: what `practiceCurve` and `forecastTarget` both say. */
export interface CurveSummary {
  /** Median and bands of the session's median, in ms, for each session to come. */
  readonly bands: readonly Band[];
  /** Where the session medians end up with endless practice, in ms, with its 90 % interval. */
  readonly floor: Range;
  /** Laps in which the gap to the floor halves; undefined where next to no draw moves with practice. */
  readonly halfLife: (Range & { readonly sessions: Range }) | undefined;
  /** Probability that the level does not move with practice. */
  readonly flatChance: number;
  /** Fewer than four sessions: what is shown comes from the assumptions more than from the laps. */
  readonly isMostlyAssumption: boolean;
}

export interface PracticeCurve extends CurveSummary {
  /** The curve at each past session (laps driven up to its middle), in ms, with its 50 and 90 % bands. */
  readonly line: readonly (Band & { readonly place: number })[];
}

/** What a practice curve is computed from. */
export interface PracticeQuestion {
  /** Past sessions of one page, oldest first. */
  readonly history: readonly PastSession[];
  /** Sessions to come, in order. */
  readonly future?: readonly FutureSession[];
  readonly seed: number;
  readonly events?: readonly SessionEvent[];
  /** Number of draws; 2,000 unless said. */
  readonly draws?: number;
}

const leastSessions = 2;
const sessionsToKnow = 4;
/** Under this share of draws that move with practice, a half-life says nothing. */
const leastMoving = 0.05;

/**
 * The practice curve of a combo's page: T(x) = a + b·2^(−x/h) over laps driven, as a posterior on a grid (our
 * methods, §5; an exponential after Heathcote, Brown & Mewhort 2000).
 * @returns line, bands, floor and half-life, or a reason with fewer than 2 sessions
 * @throws RangeError for a value that is not finite, naming it
 */
export function practiceCurve(question: PracticeQuestion): Figure<PracticeCurve> {
  const drawn = drawCurve(question);
  if (!drawn.known) return drawn;
  const { posterior, draws } = drawn.value;
  const line = question.history.map((session, i) => ({
    place: placeOf(session),
    ...bandOf(draws.levels[i] ?? []),
  }));
  return known({ line, ...summariseCurve(question, posterior, draws) });
}

/** The posterior and its draws, or the reason why there are none. */
export function drawCurve(
  question: PracticeQuestion,
): Figure<{ posterior: CurvePosterior; draws: CurveDraws }> {
  const { history, future = [], events = [], seed, draws = usualDraws } = question;
  requireNumber(seed, "seed");
  requireSessions(history, future);
  if (history.length < leastSessions) return unknown(needs(leastSessions, "session", history.length));
  const posterior = curvePosterior(history, events);
  return known({ posterior, draws: curveDraws(posterior, history, future, seed, draws) });
}

/** Bands, floor and half-life of drawn curves. */
export function summariseCurve(
  { history, future = [] }: PracticeQuestion,
  posterior: CurvePosterior,
  draws: CurveDraws,
): CurveSummary {
  const rate = lapsASession(history, future);
  const moving = draws.halfLives.length / draws.floors.length;
  const laps = moving < leastMoving ? undefined : rangeOf(draws.halfLives);
  return {
    bands: draws.medians.map(bandOf),
    floor: rangeOf(draws.floors),
    halfLife: laps && {
      ...laps,
      sessions: { low: laps.low / rate, mid: laps.mid / rate, high: laps.high / rate },
    },
    flatChance: posterior.flatChance,
    isMostlyAssumption: history.length < sessionsToKnow,
  };
}

/** Laps a session at the present rate: of the planned sessions, else of all past ones; at least one lap. */
function lapsASession(history: readonly PastSession[], future: readonly FutureSession[]): number {
  const sessions = future.length > 0 ? future : history;
  return Math.max(1, sessions.reduce((sum, { laps }) => sum + laps, 0) / sessions.length);
}
