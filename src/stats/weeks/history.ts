import { requireNumber } from "#numbers";

/** One past session of a combo's page, as the practice curve sees it. */
export interface PastSession {
  /** Timed laps driven on the page before this session. */
  readonly lapsBefore: number;
  /** Timed laps in it. */
  readonly laps: number;
  readonly medianMs: number;
  readonly bestMs: number;
}

/** A session still to come. */
export interface FutureSession {
  readonly laps: number;
}

/** Where a session stands on the axis of practice: laps driven before it and half of its own. */
export function placeOf(session: Pick<PastSession, "lapsBefore" | "laps">): number {
  return session.lapsBefore + session.laps / 2;
}

/** Laps driven up to the end of the last session. */
export function lapsSoFar(history: readonly PastSession[]): number {
  const last = history.at(-1);
  return last === undefined ? 0 : last.lapsBefore + last.laps;
}

/** The places of the sessions to come, driven one after the other from here. */
export function futurePlaces(history: readonly PastSession[], future: readonly FutureSession[]): number[] {
  let driven = lapsSoFar(history);
  return future.map(({ laps }) => {
    driven += laps;
    return driven - laps / 2;
  });
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
