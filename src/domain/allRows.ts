import type { AsideRow } from "./asideRow.ts";
import { type TableName, type Tables, tableNames } from "./rows.ts";

/** Every row of a logbook, table by table; `aside`, where there are any, holds what could not stand in its table. */
export type AllRows = { readonly [T in TableName]: readonly Tables[T][] } & {
  readonly aside?: readonly AsideRow[];
};

/** Builds rows table by table, in the order of a backup. */
export function everyTable<R>(of: <T extends TableName>(table: T) => R): { readonly [T in TableName]: R } {
  return Object.fromEntries(tableNames.map((table) => [table, of(table)])) as { [T in TableName]: R };
}

/** A logbook without any row. */
export const noRows: AllRows = everyTable(() => []);
