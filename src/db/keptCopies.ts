import type { Id } from "#domain";
import { faultOf } from "./fault.ts";
import type { KeptCopy, Shelf } from "./shelf.ts";

/** The states kept of a logbook, the one made last first. */
export async function keptCopies(shelf: Shelf, logbook: string): Promise<KeptCopy[]> {
  const rows = await shelf.kept.where("logbook").equals(logbook).toArray();
  return rows.sort((a, b) => (b.n ?? 0) - (a.n ?? 0) || b.madeAt - a.madeAt || (a.id < b.id ? 1 : -1));
}

/** The backup file of a kept state. Throws the fault `missing` when it has gone. */
export async function packOf(shelf: Shelf, id: Id): Promise<Blob> {
  const pack = await shelf.packs.get(id).catch((error: unknown) => {
    throw faultOf(error, "Kept state not read");
  });
  if (pack === undefined) throw faultOf(new Error("gone"), "Kept state not read: it is no longer there");
  return new Blob([pack.packed]);
}
