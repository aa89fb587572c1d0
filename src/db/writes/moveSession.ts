import type { CalendarDate, Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { liveRows } from "./combos.ts";
import { liveRunsOf } from "./rowsOf.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

export interface SessionDate {
  readonly sessionId: Id;
  readonly date: CalendarDate;
  /** Start at the new date; where the time of day is not known, noon. */
  readonly startedAt: number;
  readonly isTimeOfDayKnown: boolean;
  readonly zone?: string;
}

/**
 * Moves a session to another date or time of day; its end and its runs move by as much, and back in time also the page that
 * was turned with it: one of a clock ahead would else begin in years. Forward it stays, for the sessions it has since.
 */
export function changeSessionDate(book: Logbook, { sessionId, ...to }: SessionDate): Promise<Change> {
  return write(book, "Date not changed", async (writer) => {
    const session = await writer.get("sessions", sessionId);
    const shift = to.startedAt - session.startedAt;
    const end = session.endedAt === undefined ? {} : { endedAt: session.endedAt + shift };
    await writer.patch("sessions", sessionId, { ...to, ...end });
    for (const run of shift === 0 ? [] : await liveRunsOf(writer, sessionId)) {
      const runEnd = run.endedAt === undefined ? {} : { endedAt: run.endedAt + shift };
      await writer.patch("runs", run.id, { startedAt: run.startedAt + shift, ...runEnd });
    }
    if (shift < 0)
      for (const page of await liveRows(writer, "pages"))
        if (page.from === session.startedAt) await writer.patch("pages", page.id, { from: to.startedAt });
    return changeOf(writer, "Date of the session changed");
  });
}

/** Moves a session with its runs to another combo. */
export function moveSessionToCombo(
  book: Logbook,
  { sessionId, comboId }: { readonly sessionId: Id; readonly comboId: Id },
): Promise<Change> {
  return write(book, "Session not moved", async (writer) => {
    await writer.get("combos", comboId);
    await writer.patch("sessions", sessionId, { comboId });
    for (const run of await liveRunsOf(writer, sessionId)) await writer.patch("runs", run.id, { comboId });
    return changeOf(writer, "Session moved to another combo");
  });
}
