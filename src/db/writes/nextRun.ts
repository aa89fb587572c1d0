import { isUntouched } from "#combo";
import { type Id, type RigSettings, type Run, rigOn, type Session } from "#domain";
import { addRunAfter, type RunSettings } from "./newRun.ts";
import { liveRunsOf } from "./rowsOf.ts";
import type { Writer } from "./writer.ts";

/**
 * Adds the next run of a session, with the settings a next run has. While the session is open, a change of the rig that
 * was written since the run before was begun holds from this run on.
 */
export async function addNextRun(
  writer: Writer,
  session: Session,
  before: Run | undefined,
  settings: RunSettings = {},
  id?: Id,
): Promise<Run> {
  const rigId = await rigOfNext(writer, session, before, settings.startedAt ?? writer.now);
  return addRunAfter(writer, session, before, { ...(rigId !== undefined && { rigId }), ...settings }, id);
}

async function rigOfNext(
  writer: Writer,
  session: Session,
  before: Run | undefined,
  at: number,
): Promise<Id | undefined> {
  if (session.endedAt !== undefined || before === undefined) return undefined;
  const rigs = await writer.transaction.table<RigSettings, Id>("rigs").toArray();
  const inForce = rigOn(
    rigs.filter(({ deletedAt, createdAt }) => deletedAt === undefined && createdAt <= at),
    session.date,
  );
  return inForce !== undefined && inForce.createdAt > before.startedAt ? inForce.id : undefined;
}

/** A change of the rig is driven in the runs to come: of an open session also in one that was begun and has no lap yet. */
export async function driveWith(writer: Writer, rig: RigSettings): Promise<void> {
  const open = await writer.transaction.table("digests").orderBy("openSince").primaryKeys();
  for (const sessionId of open as Id[]) {
    const session = await writer.find("sessions", sessionId);
    const last = (await liveRunsOf(writer, sessionId)).at(-1);
    if (session === undefined || last === undefined || !isUntouched(last)) continue;
    const rigs = await writer.transaction.table<RigSettings, Id>("rigs").toArray();
    const live = rigs.filter(({ deletedAt }) => deletedAt === undefined);
    if (rigOn(live, session.date)?.id === rig.id) await writer.patch("runs", last.id, { rigId: rig.id });
  }
}
