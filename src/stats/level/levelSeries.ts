import { median, requireNumber } from "#numbers";
import type { SessionEvent } from "../weeks/sessionEvents.ts";

/** A session as the level model sees it; oldest first in a list. */
export interface LevelSession {
  /** Timed laps driven on the page before it, and in it. */
  readonly lapsBefore: number;
  readonly laps: number;
  readonly medianMs: number;
}

/** Sessions and dated events in the units of the model: shares of the lap, and sessions of the usual length. */
export interface LevelSeries {
  /** Number of the first session taken; older ones are left out because there are too many. */
  readonly from: number;
  readonly count: number;
  /** Median of the session medians, in ms: what a share is a share of. */
  readonly usual: number;
  readonly meanLaps: number;
  /** Medians as shares of the usual lap above it. */
  readonly y: Float64Array;
  /** Practice between the session before and this one, in sessions. */
  readonly w: Float64Array;
  /** Steps between the session before and this one. */
  readonly steps: Uint8Array;
  readonly hasBreaks: boolean;
  /** What is left, at each session, of the cost of earlier breaks, and of the breaks just before it (sum, and sum of squares). */
  readonly fade: Float64Array;
  readonly onset: Float64Array;
  readonly onsetSquares: Float64Array;
  /** The same for events after the last session. */
  readonly stepsAhead: number;
  readonly breaksAhead: number;
  /** What is left of the cost of a break at the end of the last session of what there was at its middle. */
  readonly fadeToEnd: number;
}

/** So many sessions fix a level; more only take time. */
const MOST_SESSIONS = 250;
const LEAST_PRACTICE = 0.05;
const LAPS_TO_HALVE_BREAK = 20;

/** What is left of the cost of a break after so many laps. */
export function breakLeft(laps: number): number {
  return 2 ** (-laps / LAPS_TO_HALVE_BREAK);
}

/** Practice of so many laps, in sessions of the usual length. */
export function practiceOf(laps: number, meanLaps: number): number {
  return Math.max(LEAST_PRACTICE, laps / meanLaps);
}

/**
 * Sessions as the level model takes them: at most the last 250. Our methods, §5.
 * @param sessions at least one, oldest first
 * @throws RangeError for a value that is not finite or out of its range, naming it
 */
export function levelSeries(sessions: readonly LevelSession[], events: readonly SessionEvent[]): LevelSeries {
  requireLevelSessions(sessions);
  const from = Math.max(0, sessions.length - MOST_SESSIONS);
  const taken = sessions.slice(from);
  const count = taken.length;
  const usual = median(taken.map(({ medianMs }) => medianMs));
  if (usual === undefined) throw new RangeError("sessions is empty: a level needs a session");
  const meanLaps = Math.max(1, taken.reduce((sum, { laps }) => sum + laps, 0) / count);
  const places = taken.map(({ lapsBefore, laps }) => lapsBefore + laps / 2);
  const apart = (i: number) => (i === 0 ? 0 : (places[i] ?? 0) - (places[i - 1] ?? 0));
  const steps = new Uint8Array(count + 1);
  const breaks = new Uint8Array(count + 1);
  events.forEach(({ kind, afterSession }, index) => {
    requireEvent(afterSession, sessions.length, index);
    const place = afterSession - from;
    if (place < 0) return;
    const marks = kind === "step" ? steps : breaks;
    marks[place] = (marks[place] ?? 0) + 1;
  });
  // A break ends where the session after it begins.
  const sinceBreak = taken.map(({ laps }) => breakLeft(laps / 2));
  return {
    from,
    count,
    usual,
    meanLaps,
    y: Float64Array.from(taken, ({ medianMs }) => medianMs / usual - 1),
    w: Float64Array.from(taken, (_, i) => practiceOf(apart(i), meanLaps)),
    steps: steps.slice(0, count),
    hasBreaks: breaks.some((some) => some > 0),
    fade: Float64Array.from(taken, (_, i) => breakLeft(apart(i))),
    onset: Float64Array.from(sinceBreak, (left, i) => left * (breaks[i] ?? 0)),
    onsetSquares: Float64Array.from(sinceBreak, (left, i) => left ** 2 * (breaks[i] ?? 0)),
    stepsAhead: steps[count] ?? 0,
    breaksAhead: breaks[count] ?? 0,
    fadeToEnd: sinceBreak.at(-1) ?? 1,
  };
}

/**
 * Refuses sessions with a value that is not a finite number, or with laps or times below nothing.
 * @throws RangeError that names the session and the value
 */
function requireLevelSessions(sessions: readonly LevelSession[]): void {
  sessions.forEach((session, index) => {
    for (const name of ["lapsBefore", "laps", "medianMs"] as const) {
      requireNumber(session[name], `sessions[${index}].${name}`);
      if (session[name] < 0)
        throw new RangeError(`sessions[${index}].${name} is ${session[name]}: 0 or more is needed`);
    }
    if (session.medianMs === 0)
      throw new RangeError(`sessions[${index}].medianMs is 0: a lap time is needed`);
  });
}

function requireEvent(afterSession: number, count: number, index: number): void {
  if (!Number.isInteger(afterSession) || afterSession < 0 || afterSession > count) {
    throw new RangeError(
      `events[${index}].afterSession is ${afterSession}: a whole number from 0 to ${count} is needed`,
    );
  }
}
