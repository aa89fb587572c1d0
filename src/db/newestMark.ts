import { Dexie } from "dexie";
import type { Id } from "#domain";
import type { ReadTable } from "./logbook.ts";
import type { StoredDigest } from "./storedDigest.ts";

/** The newest `changedAt` of a combo's digests, or 0 when it has none. Reads one key. */
export async function newestMark(
  digests: Pick<ReadTable<StoredDigest>, "where">,
  comboId: Id,
): Promise<number> {
  const keys = await digests
    .where("[comboId+changedAt]")
    .between([comboId, Dexie.minKey], [comboId, Dexie.maxKey])
    .reverse()
    .limit(1)
    .keys();
  const key: unknown = keys[0];
  return Array.isArray(key) ? Number(key[1]) : 0;
}
