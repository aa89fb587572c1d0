import { Dexie } from "dexie";
import type { Id, Run, Session } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Writer } from "./writer.ts";

/** Runs of a session in order, deleted ones too. */
export function runsOf(writer: Writer, sessionId: Id): Promise<Run[]> {
  return writer.transaction
    .table<Run, Id>("runs")
    .where("[sessionId+n]")
    .between([sessionId, Dexie.minKey], [sessionId, Dexie.maxKey])
    .toArray();
}

/** Runs of a session that are not deleted, in order. */
export async function liveRunsOf(writer: Writer, sessionId: Id): Promise<Run[]> {
  return (await runsOf(writer, sessionId)).filter((run) => run.deletedAt === undefined);
}

/** Sessions of a combo, oldest first, deleted ones too. */
export function sessionsOf(writer: Writer, comboId: Id): Promise<Session[]> {
  return writer.transaction
    .table<Session, Id>("sessions")
    .where("[comboId+startedAt]")
    .between([comboId, Dexie.minKey], [comboId, Dexie.maxKey])
    .toArray();
}

/** Refuses an empty name, and trims the others. */
export function nameFrom(text: string, of: string): string {
  const name = text.trim();
  if (name === "") throw new LedgerFault("invalid", `Nothing was changed: the ${of} needs a name.`);
  return name;
}
