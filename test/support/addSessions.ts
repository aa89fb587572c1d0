import { addLaps, type Logbook, startSession } from "#db";
import type { CalendarDate, Focus, Id, Run } from "#domain";
import { aLap } from "./aLap.ts";

/** A session that is over, with one run. */
export interface PastSession {
  readonly date: CalendarDate;
  /** Lap times in order, ms. */
  readonly laps: readonly number[];
  /** How many decimals of a second were known. */
  readonly decimals?: number;
  readonly kind?: Run["kind"];
  readonly focus?: Focus;
  readonly note?: string;
}

/** Writes ended sessions of one combo, each begun at 19:00 UTC of its day; gives their ids. */
export async function addSessions(
  book: Logbook,
  comboId: Id,
  sessions: readonly PastSession[],
): Promise<readonly Id[]> {
  const ids: Id[] = [];
  for (const { date, laps, decimals = 3, kind = "pace", ...fields } of sessions) {
    const startedAt = Date.parse(`${date}T19:00:00Z`);
    const endedAt = startedAt + laps.reduce((sum, ms) => sum + ms, 0);
    const { sessionId, runId } = await startSession(book, {
      comboId,
      date,
      startedAt,
      endedAt,
      zone: "Europe/Berlin",
      run: { kind, endedAt },
      ...fields,
    });
    await addLaps(book, {
      runId,
      laps: laps.map((ms) => ({ id: book.newId(), lap: aLap(ms, { decimals }) })),
    });
    ids.push(sessionId);
  }
  return ids;
}
