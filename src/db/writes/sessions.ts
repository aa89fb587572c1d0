import { Dexie } from "dexie";
import type { Id, Run, Session } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields, type Patch } from "../patch.ts";
import type { Change } from "./change.ts";
import { type AskedCombo, comboAsked } from "./combos.ts";
import { addRunAfter, endRuns, type RunSettings } from "./newRun.ts";
import { liveRunsOf, runsOf } from "./rowsOf.ts";
import type { Fields } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

interface SessionFields
  extends Omit<Fields<Session>, "comboId" | "startedAt" | "isTimeOfDayKnown" | "focus" | "note">,
    Partial<Pick<Session, "startedAt" | "isTimeOfDayKnown" | "focus" | "note">> {
  /** Ids made when the driver asked, so that trying again makes no second session. */
  readonly id?: Id;
  readonly runId?: Id;
  /** Settings of the first run; the rest is carried over from the combo's last run. */
  readonly run?: RunSettings;
}

/** A session of a combo that is there, or of one by its names, made with it where it is new. */
export type NewSession = SessionFields & AskedCombo;

/**
 * Starts a session with its first run, and with its car, track and layout where they are new: one change, so that they go
 * with the session when it is taken back. `endedAt` makes it one entered afterwards. Without `startedAt`, now.
 */
export function startSession(
  book: Logbook,
  { id, runId, run, ...asked }: NewSession,
): Promise<Change & { readonly sessionId: Id; readonly runId: Id }> {
  return write(book, "Session not started", async (writer) => {
    const known = id === undefined ? undefined : await writer.find("sessions", id);
    if (known) {
      const first = (await runsOf(writer, known.id))[0];
      return { what: "Session already started", edits: [], sessionId: known.id, runId: first?.id ?? "" };
    }
    const fields = await onCombo(writer, asked);
    const before = await lastRunOf(writer, fields.comboId);
    const session = await writer.add(
      "sessions",
      { startedAt: writer.now, isTimeOfDayKnown: true, focus: "free", note: "", ...fields },
      id,
    );
    const settings = { startedAt: session.startedAt, kind: "pace", effort: "full", surface: "dry" } as const;
    const first = await addRunAfter(writer, session, before, { ...settings, ...run }, runId);
    return { ...changeOf(writer, "Session started"), sessionId: session.id, runId: first.id };
  });
}

/** The fields of a session with the id of its combo. */
async function onCombo(writer: Writer, asked: NewSession): Promise<SessionFields & { readonly comboId: Id }> {
  const comboId = await comboAsked(writer, asked);
  if ("comboId" in asked) return asked;
  const { combo: _, ...fields } = asked;
  return { ...fields, comboId };
}

/** The last run of a combo that the driver drove. */
function lastRunOf(writer: Writer, comboId: Id): Promise<Run | undefined> {
  return writer.transaction
    .table<Run, Id>("runs")
    .where("[comboId+startedAt]")
    .between([comboId, Dexie.minKey], [comboId, Dexie.maxKey])
    .reverse()
    .filter((run) => run.deletedAt === undefined && run.guest === undefined)
    .first();
}

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
