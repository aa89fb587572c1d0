import type { Id, Session } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { type AskedCombo, comboAsked } from "./combos.ts";
import { onCombo } from "./onCombo.ts";
import { runsOf } from "./rowsOf.ts";
import { runInWords } from "./runInWords.ts";
import { sessionLike } from "./sessionLike.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/** Moves a run to the end of another session, and to that session's combo. */
export function moveRunToSession(
  book: Logbook,
  { runId, sessionId }: { readonly runId: Id; readonly sessionId: Id },
): Promise<Change> {
  return write(book, "Run not moved", async (writer) => {
    const what = `${await runInWords(writer, await writer.get("runs", runId))} moved`;
    await moveInto(writer, runId, await writer.get("sessions", sessionId));
    return changeOf(writer, what);
  });
}

/**
 * Moves a run to another combo, which is made where it is new: into that combo's session of the same date, or into a new
 * one made for it.
 */
export function moveRunToCombo(
  book: Logbook,
  { runId, ...to }: { readonly runId: Id } & AskedCombo,
): Promise<Change & { readonly sessionId: Id }> {
  return write(book, "Run not moved", async (writer) => {
    const run = await writer.get("runs", runId);
    const what = `${await runInWords(writer, run)} moved`;
    const comboId = await comboAsked(writer, to);
    const from = await writer.get("sessions", run.sessionId);
    const { startedAt } = run;
    const session = await sessionLike(writer, from, { comboId, startedAt, endedAt: from.endedAt });
    await moveInto(writer, runId, session);
    return { ...changeOf(writer, what), sessionId: session.id };
  });
}

async function moveInto(writer: Writer, runId: Id, session: Session): Promise<void> {
  const n = ((await runsOf(writer, session.id)).at(-1)?.n ?? 0) + 1;
  const { comboId } = await writer.get("runs", runId);
  // The line it drove is one of the plan it leaves.
  const there = { sessionId: session.id, ...onCombo(comboId, session.comboId), line: undefined, n };
  await writer.patch("runs", runId, there);
}
