import { type Collection, Dexie } from "dexie";
import type { Id, Stamped } from "#domain";
import type { ReadTable } from "../logbook.ts";

/** All rows of an index that begins with an id, in the order of its second part. */
export function within<R>(table: Pick<ReadTable<R>, "where">, index: string, id: Id): Collection<R, Id> {
  return table.where(index).between([id, Dexie.minKey], [id, Dexie.maxKey]);
}

/** Not marked as deleted. */
export function isLive(row: Pick<Stamped, "deletedAt">): boolean {
  return row.deletedAt === undefined;
}
