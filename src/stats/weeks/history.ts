import { requireNumber } from "#numbers";
import type { SessionEvent } from "./sessionEvents.ts";

/** One past session of a combo's page, as forecasts see it. */
export interface PastSession {
  /** Timed laps driven on the page before this session. */
  readonly lapsBefore: number;
  /** Timed laps in it. */
  readonly laps: number;
  readonly medianMs: number;
  readonly bestMs: number;
  /** To how many decimals of a second the best is known; three where not said. */
  readonly bestDecimals?: number | undefined;
}

/** A session still to come. */
export interface FutureSession {
  readonly laps: number;
}

/** What a forecast is made from. */
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

/**
 * Refuses sessions with a value that is not a finite number, or with laps or times below nothing.
 * @throws RangeError that names the session and the value
 */
export function requireSessions(
  history: readonly PastSession[],
  future: readonly FutureSession[] = [],
): void {
  history.forEach((session, index) => {
    for (const name of ["lapsBefore", "laps", "medianMs", "bestMs"] as const) {
      requireNumber(session[name], `history[${index}].${name}`);
      if (session[name] < 0)
        throw new RangeError(`history[${index}].${name} is ${session[name]}: 0 or more is needed`);
    }
    if (session.medianMs === 0) throw new RangeError(`history[${index}].medianMs is 0: a lap time is needed`);
  });
  future.forEach(({ laps }, index) => {
    requireNumber(laps, `future[${index}].laps`);
    if (laps < 0) throw new RangeError(`future[${index}].laps is ${laps}: 0 or more is needed`);
  });
}
