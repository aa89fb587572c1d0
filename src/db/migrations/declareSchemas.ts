import type { Dexie, IndexableType, Table, Transaction } from "dexie";
import { type AsideRow, asideRow } from "#domain";
import { mayBeUnreadable } from "../fault.ts";
import type { Migration, OldRow } from "./migration.ts";
import { migrations } from "./migrations.ts";
import { stepRow, whyNot } from "./stepRow.ts";

const rowsAtOnce = 500;

/**
 * Tells Dexie every schema, and to run the row functions of each step on opening an older logbook. Row by row: one whose
 * step fails goes into the table `aside` as it was, one that cannot be read stays where it is, all others go on.
 */
export function declareSchemas(database: Dexie, steps: readonly Migration[] = migrations): void {
  for (const step of steps) {
    const version = database.version(step.version).stores({ ...step.indexes });
    const tables = Object.keys(step.rows);
    if (tables.length === 0) continue;
    version.upgrade(async (transaction) => {
      for (const table of tables) await migrateTable(transaction, step, table);
    });
  }
}

async function migrateTable(transaction: Transaction, step: Migration, name: string): Promise<void> {
  const table = transaction.table<OldRow, IndexableType>(name);
  const keys = await table.toCollection().primaryKeys();
  for (let at = 0; at < keys.length; at += rowsAtOnce) {
    const part = keys.slice(at, at + rowsAtOnce);
    const rows = await readable(table, part);
    const done = { drop: [] as IndexableType[], put: [] as OldRow[], aside: [] as AsideRow[] };
    part.forEach((key, index) => {
      const old = rows[index];
      if (old === undefined) return;
      const { row, aside } = stepRow(step, name, old);
      if (aside !== undefined) done.aside.push(aside);
      if (row === undefined) done.drop.push(key);
      else done.put.push(row);
    });
    await table.bulkDelete(done.drop);
    await table.bulkPut(done.put).catch(() => putEach(step, table, part, rows, done.aside));
    if (done.aside.length > 0) await transaction.table("aside").bulkPut(done.aside);
  }
}

/** Rows by their keys; undefined for one that the browser cannot read. */
function readable(
  table: Table<OldRow, IndexableType>,
  keys: readonly IndexableType[],
): Promise<(OldRow | undefined)[]> {
  return table.bulkGet([...keys]).catch(async () => {
    const rows: (OldRow | undefined)[] = [];
    for (const key of keys)
      rows.push(
        await table.get(key).catch((error: unknown) => {
          if (!mayBeUnreadable(error)) throw error;
          return undefined;
        }),
      );
    return rows;
  });
}

/** Stores the new rows one by one; one the database does not take goes aside as it was. */
async function putEach(
  step: Migration,
  table: Table<OldRow, IndexableType>,
  keys: readonly IndexableType[],
  rows: readonly (OldRow | undefined)[],
  aside: AsideRow[],
): Promise<void> {
  for (const [index, old] of rows.entries()) {
    const next = old && stepRow(step, table.name, old).row;
    if (old === undefined || next === undefined) continue;
    await table.put(next).catch(async (error: unknown) => {
      aside.push(asideRow(table.name, old, whyNot(step, error), step.version - 1));
      await table.delete(keys[index] as IndexableType);
    });
  }
}
