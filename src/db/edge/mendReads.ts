import type { DBCoreTable, Dexie } from "dexie";
import { overTables } from "./overTables.ts";

const lowest = -2;

/** Whether a value of a field can be used, and what is handed on in place of one that cannot. */
export type Mend = readonly [isRight: (value: unknown) => boolean, instead: (value: unknown) => unknown];
/** By table and field. */
export type Mends = Readonly<Record<string, Readonly<Record<string, Mend>>>>;
type Row = Readonly<Record<string, unknown>> | undefined;

/** Absent where it cannot be used. */
export const orNone = (isRight: Mend[0]): Mend => [
  (value) => value === undefined || isRight(value),
  () => undefined,
];
const gone = Symbol("no row");
/** The whole row is nothing without it. */
export const orGone = (isRight: Mend[0]): Mend => [isRight, () => gone];

/** Has a database hand on, of tables that hold nothing but what the app itself wrote, only values that can be used. */
export function mendReads(database: Dexie, mends: Mends): void {
  overTables(database, "mendReads", lowest, (table, name) => {
    const fields = Object.entries(mends[name] ?? {});
    return fields.length === 0 ? table : mendedIn(table, (row) => mended(fields, row));
  });
}

function mendedIn(table: DBCoreTable, mend: (row: Row) => Row): DBCoreTable {
  return {
    ...table,
    get: (request) => table.get(request).then(mend),
    getMany: (request) => table.getMany(request).then((rows: Row[]) => rows.map(mend)),
    query: (request) =>
      table
        .query(request)
        .then((answer) =>
          request.values === true
            ? { result: answer.result.map(mend).filter((row) => row !== undefined) }
            : answer,
        ),
  } as DBCoreTable;
}

function mended(fields: readonly (readonly [string, Mend])[], row: Row): Row {
  if (row === undefined) return row;
  const wrong = fields.filter(([field, [isRight]]) => !isRight(row[field]));
  if (wrong.length === 0) return row;
  const instead = wrong.map(([field, [, use]]) => [field, use(row[field])] as const);
  return instead.some(([, value]) => value === gone) ? undefined : { ...row, ...Object.fromEntries(instead) };
}
