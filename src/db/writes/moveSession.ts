import { type CalendarDate, type Id, lapsInOrder, type Run } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
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

/** Moves a session to another date or time of day; its end and its runs move by as much. */
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

/** Splits a session: the given run and those after it become a session of their own, on the same combo. */
export function splitSession(
  book: Logbook,
  { sessionId, fromRunId }: { readonly sessionId: Id; readonly fromRunId: Id },
): Promise<Change & { readonly sessionId: Id }> {
  return write(book, "Session not split", async (writer) => {
    const session = await writer.get("sessions", sessionId);
    const runs = await liveRunsOf(writer, sessionId);
    const at = runs.findIndex(({ id }) => id === fromRunId);
    if (at < 1)
      throw new LedgerFault(
        "invalid",
        "Nothing was changed: a session is split at its second run or a later one.",
      );
    const first = runs[at];
    const start = Math.max(first?.startedAt ?? session.startedAt, session.startedAt);
    const { comboId, isTimeOfDayKnown, date, zone, focus, endedAt } = session;
    const fields = { comboId, startedAt: start, isTimeOfDayKnown, date, zone, focus, note: "" };
    const added = await writer.add("sessions", endedAt === undefined ? fields : { ...fields, endedAt });
    for (const [index, run] of runs.slice(at).entries())
      await writer.patch("runs", run.id, { sessionId: added.id, n: index + 1 });
    const lastBefore = runs[at - 1];
    const end = lastBefore ? (lastBefore.endedAt ?? lastInstant(lastBefore)) : start;
    await writer.patch("sessions", sessionId, { endedAt: Math.max(end, session.startedAt) });
    return { ...changeOf(writer, "Session split"), sessionId: added.id };
  });
}

/** When the last lap of a run was entered, or the run's start. */
function lastInstant(run: Run): number {
  return lapsInOrder(run).reduce((last, lap) => Math.max(last, lap.createdAt), run.startedAt);
}
