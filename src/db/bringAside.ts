import type { AsideRow, Id } from "#domain";
import type { Writer } from "./writes/writer.ts";

type Rows = readonly AsideRow[] | undefined;

/** Brings what another copy has set aside, inside the transaction of a writer. What was settled on either side stays settled. */
export async function bringAside(writer: Writer, here: Rows, coming: Rows = []): Promise<void> {
  const known = new Map(here?.map((row) => [row.id, row]));
  const fresh = coming.filter(({ id, row }) => {
    const own = known.get(id);
    return own === undefined || (own.row !== undefined && row === undefined);
  });
  if (fresh.length > 0) await writer.transaction.table<AsideRow, Id>("aside").bulkPut(fresh);
}

/** Takes out again what a merge brought; what has been settled since stays settled. */
export async function takeAsideBack(writer: Writer, before: Rows = [], brought: Rows = []): Promise<void> {
  const table = writer.transaction.table<AsideRow, Id>("aside");
  const old = new Map(before.map((row) => [row.id, row]));
  for (const { id, row } of brought) {
    const was = old.get(id);
    const now = await table.get(id);
    if (was !== undefined && row === undefined) await table.put(was);
    else if (was === undefined && (now?.row !== undefined || row === undefined)) await table.delete(id);
  }
}
