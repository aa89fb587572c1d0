import { numberedRuns } from "#combo";
import { type ReadOnlyLogbook, runsOfSession, sessionOf, sessionsOfCombo } from "#db";
import { type CalendarDate, type CornerReview, type Id, isTimed, lapsInOrder } from "#domain";
import { sayLapTime } from "#words";
import type { LookedAt, ReviewDraft } from "./reviewDraft.ts";

/** A lap whose replay may be looked at. */
export interface ReviewedLap extends LookedAt {
  readonly lapId: Id;
  /** "run 2, lap 5: 1:23.456" */
  readonly name: string;
}

/** Laps of one session, the newest first. */
export interface ReviewedSession {
  readonly sessionId: Id;
  readonly date: CalendarDate;
  readonly laps: readonly ReviewedLap[];
}

/** Laps of the combo's last session that holds timed ones of the driver's own; undefined where none does. */
export async function lastReviewedSession(
  book: ReadOnlyLogbook,
  comboId: Id,
  until: number,
): Promise<ReviewedSession | undefined> {
  const sessions = (await sessionsOfCombo(book, comboId)).filter(({ startedAt }) => startedAt < until);
  for (const { id } of sessions.toReversed()) {
    const found = await reviewedSession(book, id);
    if (found !== undefined && found.laps.length > 0) return found;
  }
  return undefined;
}

/** A session by its id, with its timed laps; undefined where it is gone. */
export async function reviewedSession(book: ReadOnlyLogbook, id: Id): Promise<ReviewedSession | undefined> {
  const session = await sessionOf(book, id);
  if (session === undefined) return undefined;
  const laps = numberedRuns(await runsOfSession(book, id))
    .filter(({ run }) => run.guest === undefined)
    .flatMap(({ run, number }) =>
      lapsInOrder(run).flatMap((lap, index) =>
        isTimed(lap)
          ? [
              {
                sessionId: id,
                lapId: lap.id,
                name: `run ${number}, lap ${index + 1}: ${sayLapTime(lap.ms, lap.decimals ?? 3)}`,
              },
            ]
          : [],
      ),
    );
  return { sessionId: id, date: session.date, laps: laps.toReversed() };
}

/** The lap of a review and the day it tells of: that of the lap's session; of the usual lap, today or the day it had. */
export function dated(
  { lap }: ReviewDraft,
  before: CornerReview | undefined,
  today: CalendarDate,
  session: ReviewedSession | undefined,
): Pick<CornerReview, "on" | "sessionId" | "lapId"> {
  const kept = before?.on ?? today;
  if (lap === undefined) return { on: kept };
  const { sessionId, lapId } = lap;
  const on = before?.sessionId === sessionId ? kept : (session?.date ?? kept);
  return { on, sessionId, ...(lapId !== undefined && { lapId }) };
}
