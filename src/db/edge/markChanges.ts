import {
  type DBCore,
  type DBCoreMutateRequest,
  type DBCoreTable,
  type DBCoreTransaction,
  Dexie,
} from "dexie";
import { type Id, type TableName, tableNames } from "#domain";
import type { ChangeMark } from "../derived.ts";
import { isText } from "./kinds.ts";

/** Above all that Dexie itself lays over the database, so that live queries hear of the marks. */
const overDexie = 10;

/** Tables whose rows are of one combo, and which figures of that combo rest on. */
const ofCombo = [
  "pages",
  "references",
  "sessions",
  "runs",
  "targets",
] as const satisfies readonly TableName[];

type Row = { readonly id?: unknown; readonly comboId?: unknown } | undefined;

const isMarked = (table: string) => (tableNames as readonly string[]).includes(table);
const isOfCombo = (table: string) => (ofCombo as readonly string[]).includes(table);
const modeOf = (transaction: DBCoreTransaction) => (transaction as unknown as IDBTransaction).mode;

/**
 * Gives a fresh mark, in the very transaction, to whatever a write of any kind changes: to the combos of the rows before and
 * after it, or, of rows that are no one combo's, to their table. Beneath all writes, so that none can forget it. A migration
 * marks nothing.
 * @param newMark never gives the same twice
 */
export function markChanges(database: Dexie, newMark: () => Id): void {
  const marked = new WeakMap<DBCoreTransaction, Set<string>>();
  /** A transaction is stored as a whole, so one mark in it is enough. */
  const mark = (core: DBCore, trans: DBCoreTransaction, ids: readonly string[]): PromiseLike<unknown> => {
    const known = marked.get(trans) ?? new Set();
    marked.set(trans, known);
    const fresh = [...new Set(ids)].filter((id) => !known.has(id));
    if (fresh.length === 0) return Dexie.Promise.resolve();
    for (const id of fresh) known.add(id);
    const values = fresh.map((id): ChangeMark => ({ id, mark: newMark() }));
    return core.table("changeMarks").mutate({ trans, type: "put", values });
  };
  database.use({
    stack: "dbcore",
    name: "markChanges",
    level: overDexie,
    create: (core): Partial<DBCore> => ({
      transaction: (tables, mode, options) =>
        core.transaction(
          mode === "readwrite" && tables.some(isMarked) ? [...new Set([...tables, "changeMarks"])] : tables,
          mode,
          options,
        ),
      table: (name) => {
        const table = core.table(name);
        if (!isMarked(name)) return table;
        const mutate = (request: DBCoreMutateRequest) => {
          if (modeOf(request.trans) === "versionchange") return table.mutate(request);
          return rowsBefore(table, request).then((before) =>
            Dexie.Promise.all([
              table.mutate(request),
              mark(core, request.trans, markedBy(name, [...before, ...rowsAfter(request)])),
            ]).then(([done]) => done),
          );
        };
        return { ...table, mutate } as DBCoreTable;
      },
    }),
  });
}

/** What a change of these rows marks. A row that names no combo was never handed on, so no figure rests on it. */
function markedBy(table: string, rows: readonly Row[]): string[] {
  if (!isOfCombo(table)) return [table];
  return rows.flatMap((row) => (isText(row?.comboId) ? [row.comboId] : []));
}

function rowsAfter(request: DBCoreMutateRequest): readonly Row[] {
  return "values" in request ? request.values : [];
}

/** The rows as they are before the change; of tables that are no one combo's, none is read. */
function rowsBefore(table: DBCoreTable, request: DBCoreMutateRequest): PromiseLike<readonly Row[]> {
  const { trans } = request;
  if (request.type === "add" || !isOfCombo(table.name)) return Dexie.Promise.resolve([]);
  if (request.type === "deleteRange") {
    const query = { index: table.schema.primaryKey, range: request.range };
    return table.query({ trans, values: true, query }).then(({ result }) => result as readonly Row[]);
  }
  // What a change of one row has just read is not read again.
  const keys = request.keys ?? (request.type === "put" ? request.values.map(({ id }: { id: Id }) => id) : []);
  return table.getMany({ trans, keys, cache: "immutable" });
}
