import type { Transaction } from "dexie";
import type { Id, Lap, Session, Stamped, TableName, Tables } from "#domain";
import { LedgerFault } from "../fault.ts";
import { isSame, type Patch } from "../patch.ts";
import type { Change, Edit } from "./change.ts";
import { replaceRow } from "./replaceRow.ts";
import { type Fields, stampChanged, stampDeleted, stampNew } from "./stamp.ts";

/** What a write does its work with: one transaction, every row recorded before and after. */
export interface Writer {
  readonly now: number;
  readonly newId: () => Id;
  readonly transaction: Transaction;
  /** The row, deleted or not. */
  readonly find: <T extends TableName>(table: T, id: Id) => Promise<Tables[T] | undefined>;
  /** The row; throws the fault `missing` when it is not there or deleted. */
  readonly get: <T extends TableName>(table: T, id: Id) => Promise<Tables[T]>;
  readonly add: <T extends TableName>(table: T, fields: Fields<Tables[T]>, id?: Id) => Promise<Tables[T]>;
  /** A session made of a part of another one: begun when that was, so that a clock which dated it is known by it still. */
  readonly addPart: (of: Pick<Session, "createdAt">, fields: Fields<Session>) => Promise<Session>;
  readonly patch: <T extends TableName>(table: T, id: Id, patch: Patch<Tables[T]>) => Promise<Tables[T]>;
  readonly remove: <T extends TableName>(table: T, id: Id) => Promise<void>;
  /** Stores a row that is stamped already. */
  readonly put: <T extends TableName>(table: T, row: Tables[T]) => Promise<void>;
  readonly edits: () => Edit[];
}

/** A writer inside the given transaction. */
export function makeWriter(transaction: Transaction, now: number, newId: () => Id): Writer {
  const recorded = new Map<string, { table: TableName; id: Id; before: unknown; after: unknown }>();

  const find: Writer["find"] = async (table, id) => {
    const known = recorded.get(`${table} ${id}`);
    return (known ? known.after : await transaction.table(table).get(id)) as Tables[typeof table] | undefined;
  };
  const get: Writer["get"] = async (table, id) => {
    const row = await find(table, id);
    if (row === undefined || row.deletedAt !== undefined) throw new LedgerFault("missing", missing(table));
    return row;
  };
  const put: Writer["put"] = async (table, row) => {
    const key = `${table} ${row.id}`;
    const known = recorded.get(key);
    const after = inOrder(row);
    const before = await replaceRow(transaction.table(table), row.id, after);
    recorded.set(key, { table, id: row.id, before: known ? known.before : before, after });
  };
  return {
    now,
    newId,
    transaction,
    find,
    get,
    put,
    add: async (table, fields, id = newId()) => {
      const row = stampNew<Tables[typeof table]>(fields, id, now);
      await put(table, row);
      return row;
    },
    addPart: async ({ createdAt }, fields) => {
      const row = { ...stampNew<Session>(fields, newId(), now), createdAt: Math.min(createdAt, now) };
      await put("sessions", row);
      return row;
    },
    patch: async (table, id, patch) => {
      const row = stampChanged(await get(table, id), patch, now);
      await put(table, row);
      return row;
    },
    remove: async (table, id) => put(table, stampDeleted(await get(table, id), now)),
    edits: () =>
      [...recorded.values()]
        .filter(({ before, after }) => !isSame(before, after))
        .map(({ before, ...rest }) => (before === undefined ? rest : { ...rest, before }) as Edit),
  };
}

/** A run's row keeps its laps in order, so that the same laps are always the same row. */
function inOrder<R extends Stamped>(row: R): R {
  if (!("laps" in row) || !Array.isArray(row.laps)) return row;
  const laps: readonly Lap[] = row.laps;
  return { ...row, laps: laps.toSorted((a, b) => a.n - b.n || (a.id < b.id ? -1 : 1)) };
}

const singular: Readonly<Record<TableName, string>> = {
  preferences: "preferences are",
  cars: "car is",
  tracks: "track is",
  layouts: "layout is",
  combos: "combo is",
  pages: "page is",
  references: "reference lap is",
  sessions: "session is",
  runs: "run is",
  rigs: "rig settings are",
  targets: "target is",
  forecasts: "forecast is",
  rigTests: "rig test is",
  cornerReviews: "corner review is",
  plans: "plan is",
};

function missing(table: TableName): string {
  return `Nothing was changed: the ${singular[table]} no longer there. It may have been deleted in another tab.`;
}

/** The change of a finished writer, in words. */
export function changeOf(writer: Writer, what: string, overwrote: readonly string[] = []): Change {
  const edits = writer.edits();
  return overwrote.length === 0
    ? { what, edits }
    : { what: `${what}; it had been changed elsewhere meanwhile`, edits, overwrote };
}
