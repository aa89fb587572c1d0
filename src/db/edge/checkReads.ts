import type {
  DBCoreCursor,
  DBCoreQueryRequest,
  DBCoreQueryResponse,
  DBCoreTable,
  DBCoreTransaction,
  Dexie,
} from "dexie";
import { LedgerFault } from "../fault.ts";
import type { UnreadableRow, UnreadableSource } from "../unreadable.ts";
import { overTables } from "./overTables.ts";
import { isSifted, isSound, sift } from "./sift.ts";

/** Above `readAround`, so that both hand on what is left; below all that Dexie itself lays over the database. */
const overReadAround = -1.5;

/** Rows met inside a write that cannot be what they should be. The write has stored nothing; they go aside, and it is begun anew. */
export class BadRowMet extends LedgerFault {
  readonly rows: readonly UnreadableRow[];

  constructor(rows: readonly UnreadableRow[]) {
    super("unreadable", "Not stored: a row of this logbook holds something that cannot be right. Try again.");
    this.rows = rows;
  }
}

const unchecked = new WeakSet<object>();

/** Lets what one transaction reads come as it is stored. */
export function readUnchecked(transaction: IDBTransaction): void {
  unchecked.add(transaction);
}

/**
 * Has a database hand on only what can be drawn and computed with. A row, or a lap inside a run, that holds something else is
 * gone around and noted. Inside a write it is met with `BadRowMet`: it must be neither lost nor written over.
 */
export function checkReads(database: Dexie, unreadable: UnreadableSource): void {
  overTables(database, "checkReads", overReadAround, (table, name) =>
    isSifted(name) ? checkedIn(table, name, unreadable.note) : table,
  );
}

type Row = NonNullable<unknown> | undefined;

function checkedIn(
  table: DBCoreTable,
  name: Parameters<typeof sift>[0],
  note: UnreadableSource["note"],
): DBCoreTable {
  const isLetThrough = (trans: DBCoreTransaction) =>
    unchecked.has(trans) || (trans as unknown as IDBTransaction).mode === "versionchange";
  /** The same rows where nothing is wrong; undefined in place of one that cannot be handed on. */
  const checked = (trans: DBCoreTransaction, rows: readonly Row[]): readonly Row[] => {
    const isRight = (row: Row) => row === undefined || isSound(name, row);
    if (rows.every(isRight) || isLetThrough(trans)) return rows;
    const sifted = rows.map((row) => (isRight(row) ? { row, bad: [] } : sift(name, row)));
    const bad = sifted.flatMap((one) => one.bad);
    if (bad.length > 0 && (trans as unknown as IDBTransaction).mode !== "readonly") throw new BadRowMet(bad);
    note(bad);
    return sifted.map(({ row }) => row as Row);
  };
  /** What was asked for, and where rows of it had to be left out, the next ones in their place. */
  const asked = (
    request: DBCoreQueryRequest,
    wanted = request.limit ?? Number.POSITIVE_INFINITY,
  ): PromiseLike<DBCoreQueryResponse> =>
    table.query(request).then((answer) => {
      if (request.values !== true) return answer;
      const rows = checked(request.trans, answer.result);
      if (rows === answer.result) return answer;
      const result = rows.filter((row) => row !== undefined).slice(0, wanted);
      const limit = request.limit ?? Number.POSITIVE_INFINITY;
      if (answer.result.length < limit || result.length === wanted) return { result };
      return asked({ ...request, limit: limit * 2 }, wanted);
    });
  return {
    ...table,
    get: (request) => table.get(request).then((row: Row) => checked(request.trans, [row])[0]),
    getMany: (request) => table.getMany(request).then((rows: Row[]) => [...checked(request.trans, rows)]),
    query: (request) => asked(request),
    openCursor: (request) =>
      table.openCursor(request).then((cursor) => {
        if (cursor === null || request.values !== true) return cursor;
        return checkedCursor(cursor, (row) => checked(request.trans, [row])[0]);
      }),
  } as DBCoreTable;
}

/** A cursor that steps over rows that cannot be handed on. */
function checkedCursor(cursor: DBCoreCursor, check: (row: Row) => Row): DBCoreCursor {
  const begin = cursor.start;
  let row: Row;
  const start = (onNext: () => void) =>
    begin.call(cursor, () => {
      try {
        row = check(cursor.value);
      } catch (error) {
        cursor.fail(error as Error);
        return;
      }
      if (row === undefined) cursor.continue();
      else onNext();
    });
  return Object.create(cursor, {
    start: { value: start },
    key: { get: () => cursor.key },
    primaryKey: { get: () => cursor.primaryKey },
    value: { get: () => row },
  }) as DBCoreCursor;
}
