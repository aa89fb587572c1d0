import type { Migration, OldRow } from "./migration.ts";
import { migrations } from "./migrations.ts";

/**
 * Rows of an older backup as the newest schema wants them. Tables no step names, and fields no step touches, stay.
 * @param schema the schema the rows were written with
 * @param steps every schema released; handed in by tests only
 */
export function migrateRows(
  tables: Readonly<Record<string, readonly OldRow[]>>,
  schema: number,
  steps: readonly Migration[] = migrations,
): Readonly<Record<string, readonly OldRow[]>> {
  let now = tables;
  for (const step of steps) {
    if (step.version <= schema) continue;
    now = Object.fromEntries(
      Object.entries(now)
        .filter(([table]) => step.indexes[table] !== null)
        .map(([table, rows]) => {
          const change = step.rows[table];
          return [table, change ? rows.map(change).filter((row) => row !== undefined) : rows];
        }),
    );
  }
  return now;
}
