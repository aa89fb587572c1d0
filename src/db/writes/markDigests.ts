import type { Id, Run, Session } from "#domain";
import { mayBeUnreadable } from "../fault.ts";
import { newestMark } from "../newestMark.ts";
import { differingFields } from "../patch.ts";
import type { StoredDigest } from "../storedDigest.ts";
import { versionFields } from "../versions.ts";
import type { Edit } from "./change.ts";
import { replaceRow } from "./replaceRow.ts";
import type { Writer } from "./writer.ts";

/** Fields of a session that no figure is made from. */
const unread = new Set([...versionFields, "note", "plan", "conditions"]);

/** The sessions whose figures a write may have changed. */
function touchedSessions(edits: readonly Edit[]): Set<Id> {
  const ids = new Set<Id>();
  for (const { table, id, before, after } of edits) {
    if (table === "runs") for (const run of [before, after]) if (run) ids.add((run as Run).sessionId);
    if (
      table === "sessions" &&
      differingFields(before ?? {}, after ?? {}).some((field) => !unread.has(field))
    )
      ids.add(id);
  }
  return ids;
}

/** Marks the digest of every session a write touched as stale, in the same transaction. */
export async function markDigests(writer: Writer): Promise<void> {
  for (const id of touchedSessions(writer.edits()))
    await markDigest(writer, id, await writer.find("sessions", id));
}

async function markDigest(writer: Writer, id: Id, session: Session | undefined): Promise<void> {
  const digests = writer.transaction.table<StoredDigest, Id>("digests");
  if (session === undefined || session.deletedAt !== undefined) return digests.delete(id);
  const newest = await newestMark(digests, session.comboId);
  const mark = freshMark(session, Math.max(writer.now, newest + 1));
  await replaceRow(digests, id, mark).catch(async (error: unknown) => {
    // A digest that cannot be read is no reason to refuse a lap: it is made anew.
    if (!mayBeUnreadable(error)) throw error;
    await digests.put(mark);
  });
}

/** The digest row of a session before any figure is made from it. */
export function freshMark(session: Session, changedAt: number): StoredDigest {
  const { id: sessionId, comboId, startedAt, endedAt } = session;
  const row = { sessionId, comboId, startedAt, changedAt };
  return endedAt === undefined ? { ...row, openSince: startedAt } : { ...row, staleSince: changedAt };
}
