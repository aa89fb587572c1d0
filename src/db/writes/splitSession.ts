import { type Id, lapsInOrder, type PlannedRun, type Run } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { movedLaps } from "./moveLaps.ts";
import { liveRunsOf } from "./rowsOf.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

export interface SessionSplit {
  readonly sessionId: Id;
  readonly fromRunId: Id;
  /** The first lap that goes; without it, or where it is the first of its run, the run goes whole. */
  readonly fromLapId?: Id;
}

/**
 * Splits a session: the given run, or its laps from the given one on, and the runs after it become a session of their
 * own, on the same combo and date. An open session goes on as the new one. Lines of the plan go with the runs that drive them,
 * those to come with the session that goes on.
 */
export function splitSession(
  book: Logbook,
  { sessionId, fromRunId, fromLapId }: SessionSplit,
): Promise<Change & { readonly sessionId: Id }> {
  return write(book, "Session not split", async (writer) => {
    const session = await writer.get("sessions", sessionId);
    const runs = await liveRunsOf(writer, sessionId);
    const at = runs.findIndex(({ id }) => id === fromRunId);
    const run = runs[at];
    const laps = run === undefined ? [] : lapsInOrder(run);
    const cut = fromLapId === undefined ? 0 : laps.findIndex(({ id }) => id === fromLapId);
    if (run === undefined || cut < 0 || (at === 0 && cut === 0))
      throw new LedgerFault(
        "invalid",
        "Nothing was changed: a session is split at its second lap or a later one, and that lap must still be there.",
      );
    const isInRun = cut > 0;
    const start = Math.max(isInRun ? whenDriven(run, cut) : run.startedAt, session.startedAt);
    const { comboId, isTimeOfDayKnown, date, zone, focus, endedAt } = session;
    const fields = { comboId, startedAt: start, isTimeOfDayKnown, date, zone, focus, note: "" };
    // The laps that go make the first run of the new session, whole runs follow it.
    const whole = isInRun ? runs.slice(at + 1) : runs.slice(at);
    const isDrivenIn = (some: readonly Run[], { id }: PlannedRun) =>
      id !== undefined && some.some(({ line }) => line === id);
    const goes = (line: PlannedRun) =>
      isDrivenIn(whole, line) || (endedAt === undefined && !isDrivenIn(runs, line));
    const { plan = [] } = session;
    const gone = plan.filter(goes);
    const added = await writer.addPart(session, {
      ...fields,
      ...(endedAt !== undefined && { endedAt }),
      ...(gone.length > 0 && { plan: gone }),
    });
    if (gone.length > 0) {
      const left = plan.filter((line) => !goes(line));
      await writer.patch("sessions", sessionId, { plan: left.length === 0 ? undefined : left });
    }
    for (const [index, later] of whole.entries())
      await writer.patch("runs", later.id, { sessionId: added.id, n: index + (isInRun ? 2 : 1) });
    if (isInRun) {
      const lapIds = laps.slice(cut).map(({ id }) => id);
      const { runId } = await movedLaps(writer, { from: run.id, lapIds, to: { newRunIn: added.id } });
      await writer.patch("runs", runId, { n: 1, startedAt: start, endedAt: run.endedAt });
      await writer.patch("runs", run.id, { endedAt: Math.max(start, run.startedAt) });
    }
    const before = isInRun ? undefined : runs[at - 1];
    const end = before === undefined ? start : (before.endedAt ?? lastInstant(before));
    await writer.patch("sessions", sessionId, { endedAt: Math.max(end, session.startedAt) });
    return { ...changeOf(writer, "Session split"), sessionId: added.id };
  });
}

/** When the lap at that place was begun, as far as the times of those before it tell; never after the run's end. */
function whenDriven(run: Run, place: number): number {
  const drivenMs = lapsInOrder(run)
    .slice(0, place)
    .reduce((sum, { ms = 0 }) => sum + ms, 0);
  return Math.min(run.startedAt + drivenMs, run.endedAt ?? Number.POSITIVE_INFINITY);
}

/** When the last lap of a run was entered, or the run's start. */
function lastInstant(run: Run): number {
  return lapsInOrder(run).reduce((last, lap) => Math.max(last, lap.createdAt), run.startedAt);
}
