import type { Id } from "#domain";
import { faultOf } from "./fault.ts";
import type { KeptBecause, KeptCopy, Shelf, ShelvedLogbook } from "./shelf.ts";
import { purgeBefore } from "./writes/purge.ts";

/** How many states of each kind are kept of a logbook; those from before a replacement go by days instead. */
const most: Partial<Readonly<Record<KeptBecause, number>>> = { session: 10, merge: 3 };

export interface NewCopy extends Omit<KeptCopy, "id" | "bytes" | "madeAt"> {
  readonly packed: Uint8Array<ArrayBuffer>;
}

/**
 * Keeps a state of a logbook on the shelf, and lets the oldest of its kind go. Nothing is kept twice: when the newest of its
 * kind has the same bytes, that one is given. Throws LedgerFault, `quota` when there is no room.
 */
export async function keepCopy(shelf: Shelf, { packed, ...copy }: NewCopy): Promise<KeptCopy> {
  const row: KeptCopy = { ...copy, id: shelf.newId(), madeAt: shelf.clock(), bytes: packed.length };
  let native: IDBTransaction | undefined;
  try {
    return await shelf.database.transaction("rw", shelf.kept, shelf.packs, async (transaction) => {
      native = transaction.idbtrans;
      const alike = (await keptCopies(shelf, copy.logbook)).filter(({ why }) => why === copy.why);
      const newest = alike[0] && (await shelf.packs.get(alike[0].id));
      if (alike[0] && newest && isSameBytes(newest.packed, packed)) return alike[0];
      await shelf.packs.add({ id: row.id, packed });
      await shelf.kept.add(row);
      const room = most[copy.why];
      if (room !== undefined) await forget(shelf, alike.slice(room - 1));
      return row;
    });
  } catch (error) {
    // A request that falls with its transaction only says "aborted"; the transaction knows the reason.
    throw faultOf(error, "State of the logbook not kept", native?.error);
  }
}

/** The states kept of a logbook, the newest first. */
export async function keptCopies(shelf: Shelf, logbook: string): Promise<KeptCopy[]> {
  const rows = await shelf.kept.where("logbook").equals(logbook).toArray();
  return rows.sort((a, b) => b.madeAt - a.madeAt || (a.id < b.id ? 1 : -1));
}

/** The backup file of a kept state. Throws the fault `missing` when it has gone. */
export async function packOf(shelf: Shelf, id: Id): Promise<Blob> {
  const pack = await shelf.packs.get(id).catch((error: unknown) => {
    throw faultOf(error, "Kept state not read");
  });
  if (pack === undefined) throw faultOf(new Error("gone"), "Kept state not read: it is no longer there");
  return new Blob([pack.packed]);
}

/** Lets states from before a replacement go, once the logbook was opened on thirty days since. */
export async function forgetOldCopies(shelf: Shelf, logbook: ShelvedLogbook): Promise<void> {
  const before = purgeBefore(logbook);
  if (before === undefined) return;
  try {
    await shelf.database.transaction("rw", shelf.kept, shelf.packs, async () => {
      const old = (await keptCopies(shelf, logbook.name)).filter(
        ({ why, madeAt }) => why === "replace" && madeAt < before,
      );
      await forget(shelf, old);
    });
  } catch (error) {
    throw faultOf(error, "Old states of the logbook not removed");
  }
}

async function forget(shelf: Shelf, copies: readonly KeptCopy[]): Promise<void> {
  const ids = copies.map(({ id }) => id);
  await shelf.kept.bulkDelete(ids);
  await shelf.packs.bulkDelete(ids);
}

function isSameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, index) => byte === b[index]);
}
