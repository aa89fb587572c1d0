import type { Id, TableName } from "#domain";
import type { Writer } from "./writer.ts";

/** Which field of which table names a row of this table as its parent. */
const childrenOf: Partial<Readonly<Record<TableName, readonly (readonly [TableName, string])[]>>> = {
  cars: [["combos", "carId"]],
  tracks: [["layouts", "trackId"]],
  layouts: [["combos", "layoutId"]],
  combos: [
    ["sessions", "comboId"],
    ["pages", "comboId"],
    ["targets", "comboId"],
    ["references", "comboId"],
    ["rigTests", "comboId"],
    ["cornerReviews", "comboId"],
    ["plans", "comboId"],
  ],
  sessions: [["runs", "sessionId"]],
  targets: [["forecasts", "targetId"]],
};

/** Whether a row that is not deleted belongs to this one. */
export async function isInUse(writer: Writer, table: TableName, id: Id): Promise<boolean> {
  for (const [child, field] of childrenOf[table] ?? []) {
    const rows: readonly { readonly id: Id; readonly deletedAt?: number }[] = await writer.transaction
      .table(child)
      .where(field)
      .equals(id)
      .toArray();
    if (rows.some((row) => row.deletedAt === undefined)) return true;
  }
  return false;
}
