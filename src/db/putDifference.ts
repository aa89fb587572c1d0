import { type AllRows, type Id, type Run, type Session, type Stamped, tableNames } from "#domain";
import { LedgerFault } from "./fault.ts";
import { newestMark } from "./newestMark.ts";
import { isSame } from "./patch.ts";
import type { StoredDigest } from "./storedDigest.ts";
import type { Edit } from "./writes/change.ts";
import { freshMark } from "./writes/markDigests.ts";
import type { Writer } from "./writes/writer.ts";

const rowsAtOnce = 500;

/** How a long piece of work is followed and stopped. */
export interface Following {
  /** Called after each part with the rows stored so far and all there are. */
  readonly onProgress?: (done: number, all: number) => void;
  /** Stopping it throws the fault `cancelled`; the transaction then keeps nothing. */
  readonly signal?: AbortSignal;
}

/** Every row that differs between two sets of rows, before and after. */
export function editsBetween(before: AllRows, after: AllRows): Edit[] {
  return tableNames.flatMap((table) => {
    const old = new Map<Id, Stamped>(before[table].map((row) => [row.id, row]));
    const edits = (after[table] as readonly Stamped[]).flatMap((row) => {
      const was = old.get(row.id);
      old.delete(row.id);
      if (was === undefined) return [{ table, id: row.id, after: row }];
      return isSame(was, row) ? [] : [{ table, id: row.id, before: was, after: row }];
    });
    return [...edits, ...[...old.values()].map((row) => ({ table, id: row.id, before: row }))] as Edit[];
  });
}

/**
 * Stores the rows of many edits as they stand, stamps and all, inside the transaction of a writer, and marks the
 * digests of the sessions touched. For what comes from another copy of the logbook; a deed of the driver goes
 * through the writer.
 */
export async function putDifference(
  writer: Writer,
  edits: readonly Edit[],
  { onProgress, signal }: Following = {},
): Promise<void> {
  let done = 0;
  for (const table of tableNames) {
    const mine = edits.filter((edit) => edit.table === table);
    for (let at = 0; at < mine.length; at += rowsAtOnce) {
      if (signal?.aborted) throw new LedgerFault("cancelled", "Stopped; nothing was changed.");
      const part = mine.slice(at, at + rowsAtOnce);
      const rows = writer.transaction.table(table);
      await rows.bulkPut(part.flatMap(({ after }) => after ?? []));
      await rows.bulkDelete(part.flatMap(({ id, after }) => (after === undefined ? [id] : [])));
      done += part.length;
      onProgress?.(done, edits.length);
    }
  }
  await markMany(writer, edits);
}

async function markMany(writer: Writer, edits: readonly Edit[]): Promise<void> {
  const ids = new Set<Id>();
  for (const { table, id, before, after } of edits) {
    if (table === "sessions") ids.add(id);
    if (table === "runs") for (const run of [before, after]) if (run) ids.add((run as Run).sessionId);
  }
  await markSessions(writer, ids);
}

/** Marks the digests of sessions as stale, many at once. */
export async function markSessions(writer: Writer, ids: ReadonlySet<Id>): Promise<void> {
  const digests = writer.transaction.table<StoredDigest, Id>("digests");
  const sessions = (await writer.transaction.table<Session, Id>("sessions").bulkGet([...ids])).filter(
    (session) => session !== undefined && session.deletedAt === undefined,
  ) as Session[];
  const live = new Set(sessions.map(({ id }) => id));
  const marks = new Map<Id, number>();
  for (const comboId of new Set(sessions.map((session) => session.comboId)))
    marks.set(comboId, Math.max(writer.now, (await newestMark(digests, comboId)) + 1));
  await digests.bulkDelete([...ids].filter((id) => !live.has(id)));
  await digests.bulkPut(
    sessions.map((session) => freshMark(session, marks.get(session.comboId) ?? writer.now)),
  );
}
