import { faultOf } from "./fault.ts";
import { inTransaction } from "./inTransaction.ts";
import { keptCopies } from "./keptCopies.ts";
import type { KeptBecause, KeptCopy, Shelf, ShelvedLogbook } from "./shelf.ts";
import { daysOpened } from "./shelvedLogbooks.ts";
import { daysKept } from "./writes/purge.ts";

/** How many states of each kind are kept of a logbook; those from before a replacement go by days instead. */
const most: Partial<Readonly<Record<KeptBecause, number>>> = { session: 10, merge: 3 };

export interface NewCopy extends Omit<KeptCopy, "id" | "bytes" | "madeAt" | "n" | "openDay"> {
  readonly packed: Uint8Array<ArrayBuffer>;
}

/**
 * Keeps a state of a logbook on the shelf, and lets the oldest of its kind go: oldest by the order of making, not by
 * what clocks said. Nothing is kept twice: when the newest of its kind has the same bytes, that one is given. Throws
 * LedgerFault, `quota` when there is no room.
 */
export async function keepCopy(shelf: Shelf, { packed, ...copy }: NewCopy): Promise<KeptCopy> {
  const { logbooks, kept, packs } = shelf;
  const tables = [logbooks.name, kept.name, packs.name];
  return inTransaction(shelf.database, tables, "State of the logbook not kept", async () => {
    const all = await keptCopies(shelf, copy.logbook);
    const alike = all.filter(({ why }) => why === copy.why);
    const newest = alike[0] && (await packs.get(alike[0].id));
    if (alike[0] && newest && isSameBytes(newest.packed, packed)) {
      const same = { ...alike[0], ...(copy.mark !== undefined && { mark: copy.mark }) };
      await kept.put(same);
      return same;
    }
    const logbook = await logbooks.get(copy.logbook);
    const row: KeptCopy = {
      ...copy,
      id: shelf.newId(),
      madeAt: shelf.clock(),
      n: 1 + (all[0]?.n ?? 0),
      ...(logbook && { openDay: daysOpened(logbook) }),
      bytes: packed.length,
    };
    await packs.add({ id: row.id, packed });
    await kept.add(row);
    const room = most[copy.why];
    if (room !== undefined) await forget(shelf, alike.slice(room - 1));
    return row;
  });
}

/**
 * Lets states from before a replacement go, once the logbook was opened on thirty days since. One kept before the days
 * were counted is given thirty more.
 */
export async function forgetOldCopies(shelf: Shelf, logbook: ShelvedLogbook): Promise<void> {
  const day = daysOpened(logbook);
  try {
    await shelf.database.transaction("rw", shelf.kept, shelf.packs, async () => {
      const replaced = (await keptCopies(shelf, logbook.name)).filter(({ why }) => why === "replace");
      const uncounted = replaced.filter(({ openDay }) => openDay === undefined);
      await shelf.kept.bulkPut(uncounted.map((copy) => ({ ...copy, openDay: day })));
      await forget(
        shelf,
        replaced.filter(({ openDay = day }) => day - openDay >= daysKept),
      );
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
