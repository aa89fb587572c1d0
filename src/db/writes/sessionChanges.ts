import type { Id, Session } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields, type Patch } from "../patch.ts";
import type { Change } from "./change.ts";
import { endRuns } from "./newRun.ts";
import { liveRunsOf } from "./rowsOf.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

export type SessionPatch = Patch<Pick<Session, "focus" | "note" | "conditions" | "targetMs" | "plan">>;

/** Changes named fields of a session. */
export function editSession(
  book: Logbook,
  edit: { readonly sessionId: Id; readonly patch: SessionPatch; readonly expected?: Session },
): Promise<Change> {
  return write(book, "Session not changed", async (writer) => {
    const before = await writer.get("sessions", edit.sessionId);
    await writer.patch("sessions", edit.sessionId, edit.patch);
    return changeOf(writer, "Session changed", overwrittenFields(before, edit.patch, edit.expected));
  });
}

/** Ends a session and its open runs; without `at`, now. Never before its start. */
export function endSession(
  book: Logbook,
  { sessionId, at, note }: { readonly sessionId: Id; readonly at?: number; readonly note?: string },
): Promise<Change> {
  return write(book, "Session not ended", async (writer) => {
    const { startedAt } = await writer.get("sessions", sessionId);
    const endedAt = Math.max(at ?? writer.now, startedAt);
    await endRuns(writer, sessionId, endedAt);
    await writer.patch("sessions", sessionId, note === undefined ? { endedAt } : { endedAt, note });
    return changeOf(writer, "Session ended");
  });
}

/** Opens an ended session again, and its last run. */
export function reopenSession(book: Logbook, { sessionId }: { readonly sessionId: Id }): Promise<Change> {
  return write(book, "Session not opened again", async (writer) => {
    await writer.patch("sessions", sessionId, { endedAt: undefined });
    const last = (await liveRunsOf(writer, sessionId)).at(-1);
    if (last?.endedAt !== undefined) await writer.patch("runs", last.id, { endedAt: undefined });
    return changeOf(writer, "Session opened again");
  });
}

/** Marks a session and its runs as deleted. */
export function deleteSession(book: Logbook, { sessionId }: { readonly sessionId: Id }): Promise<Change> {
  return write(book, "Session not deleted", async (writer) => {
    await writer.remove("sessions", sessionId);
    for (const run of await liveRunsOf(writer, sessionId)) await writer.remove("runs", run.id);
    return changeOf(writer, "Session deleted");
  });
}
