import type { AsideRow } from "#domain";
import type { Migration, OldRow } from "./migration.ts";
import { migrations } from "./migrations.ts";
import { stepRow } from "./stepRow.ts";

/**
 * Rows of an older backup as the newest schema wants them. Tables no step names, and fields no step touches, stay.
 * A row whose step fails is found in the table `aside`, as it was.
 * @param schema the schema the rows were written with
 * @param steps every schema released; handed in by tests only
 */
export function migrateRows(
  tables: Readonly<Record<string, readonly OldRow[]>>,
  schema: number,
  steps: readonly Migration[] = migrations,
): Readonly<Record<string, readonly OldRow[]>> {
  let now = tables;
  const failed: AsideRow[] = [];
  for (const step of steps) {
    if (step.version <= schema) continue;
    now = Object.fromEntries(
      Object.entries(now)
        .filter(([table]) => step.indexes[table] !== null)
        .map(([table, rows]) => {
          const change = step.rows[table];
          if (change === undefined) return [table, rows];
          const made = rows.map((row) => stepRow(step, table, row));
          failed.push(...made.flatMap(({ aside }) => aside ?? []));
          return [table, made.flatMap(({ row }) => row ?? [])];
        }),
    );
  }
  return failed.length === 0
    ? now
    : { ...now, aside: [...(now["aside"] ?? []), ...failed.map((row) => ({ ...row }))] };
}
