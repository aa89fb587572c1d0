import { Dexie } from "dexie";
import type { Id, Run, Session } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { type AskedCombo, comboAsked } from "./combos.ts";
import { addRunAfter, type RunSettings } from "./newRun.ts";
import { runsOf } from "./rowsOf.ts";
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
    const settings = { startedAt: session.startedAt, surface: "dry" } as const;
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
