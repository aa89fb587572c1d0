import { type AsideRow, asideRow } from "#domain";
import type { Migration, OldRow } from "./migration.ts";

/**
 * One row brought one step further: the new row, nothing where the step drops it, or, where the step fails, the row as it
 * was, to be set aside.
 */
export function stepRow(
  step: Migration,
  table: string,
  row: OldRow,
): { readonly row?: OldRow; readonly aside?: AsideRow } {
  try {
    const next = step.rows[table]?.(row);
    return next === undefined ? {} : { row: next };
  } catch (error) {
    return { aside: asideRow(table, row, whyNot(step, error), step.version - 1) };
  }
}

/** Why a row could not be brought to a newer schema. */
export function whyNot({ version }: Migration, error: unknown): string {
  return `not brought to schema ${version}: ${error instanceof Error ? error.message : String(error)}`;
}
