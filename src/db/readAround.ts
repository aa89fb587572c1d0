import {
  type DBCoreCursor,
  type DBCoreOpenCursorRequest,
  type DBCoreTable,
  type DBCoreTransaction,
  Dexie,
} from "dexie";
import { overTables } from "./edge/overTables.ts";
import { mayBeUnreadable } from "./fault.ts";
import type { UnreadableSource } from "./unreadable.ts";

/** Below all that Dexie itself lays over the browser's database, so that live queries see whole answers. */
const lowest = -2;

/**
 * Lets a database read around rows that cannot be read: what is asked for in bulk is then asked for row by row, those
 * that fail are noted, and the others are given. Costs nothing while all can be read. A single row asked for inside a
 * write still fails: nothing is put in place of what could not be seen. Migrations fail as before.
 */
export function readAround(database: Dexie, unreadable: UnreadableSource): void {
  overTables(database, "readAround", lowest, (table, name) =>
    aroundIn(table, (id) => unreadable.note([{ table: name, id }])),
  );
}

const modeOf = (transaction: DBCoreTransaction) => (transaction as unknown as IDBTransaction).mode;

function aroundIn(table: DBCoreTable, note: (id: string) => void): DBCoreTable {
  const getOr = oneByOne(table, note);
  return {
    ...table,
    get: (request) =>
      table.get(request).catch((error: unknown) => {
        if (modeOf(request.trans) !== "readonly") throw error;
        return getOr(request.trans, request.key, error);
      }),
    getMany: (request) =>
      table.getMany(request).catch((error: unknown) => {
        if (modeOf(request.trans) !== "readonly") throw error;
        return Dexie.Promise.all(request.keys.map((key: unknown) => getOr(request.trans, key, error)));
      }),
    query: (request) =>
      table.query(request).catch((error: unknown) => {
        if (request.values !== true || !mayBeUnreadable(error) || modeOf(request.trans) === "versionchange")
          throw error;
        return table
          .query({ ...request, values: false })
          .then(({ result }) =>
            Dexie.Promise.all(result.map((key: unknown) => getOr(request.trans, key, error))),
          )
          .then((rows) => ({ result: rows.filter((row) => row !== undefined) }));
      }),
    openCursor: (request) =>
      request.values === true && modeOf(request.trans) !== "versionchange"
        ? cursorAround(table, request, getOr)
        : table.openCursor(request),
  } as DBCoreTable;
}

type GetOr = (trans: DBCoreTransaction, key: unknown, error: unknown) => PromiseLike<unknown>;

/** One row by its key; undefined, and noted, when it is there and cannot be read. Any other error is thrown on. */
function oneByOne(table: DBCoreTable, note: (id: string) => void): GetOr {
  return (trans, key, first) => {
    if (!mayBeUnreadable(first)) throw first;
    return table.get({ trans, key }).catch((error: unknown) => {
      if (!mayBeUnreadable(error)) throw error;
      const range = { type: 1, lower: key, upper: key };
      // A connection that is lost gives the same error, but no count either.
      return table.count({ trans, query: { index: table.schema.primaryKey, range } }).then((count) => {
        if (count === 0) throw error;
        note(String(key));
        return undefined;
      });
    });
  };
}

/** A cursor that, from the first row it cannot read, goes on by keys and asks for each row by itself. */
function cursorAround(
  table: DBCoreTable,
  request: DBCoreOpenCursorRequest,
  getOr: GetOr,
): PromiseLike<DBCoreCursor | null> {
  /** Begins behind the row given; rows are handed on by the cursor whose holder sees `value`. */
  const byKeys = (behind: unknown, error: unknown) =>
    table.openCursor({ ...request, values: false }).then((keys) => {
      if (keys === null) return null;
      const begin = keys.start;
      const step = { row: undefined as unknown };
      const start = (onNext: () => void) => {
        let isBehind = behind === undefined;
        return begin(() => {
          if (!isBehind) {
            isBehind = keys.primaryKey === behind;
            keys.continue();
            return;
          }
          getOr(request.trans, keys.primaryKey, error)
            .then((found) => {
              step.row = found;
              if (found === undefined) keys.continue();
              else onNext();
            })
            .then(undefined, (fault: Error) => keys.fail(fault));
        });
      };
      return Object.defineProperties(keys, { start: { value: start }, value: { get: () => step.row } });
    });

  return table.openCursor(request).then(
    (cursor) => {
      if (cursor === null) return null;
      const begin = cursor.start;
      let last: unknown;
      const start = (onNext: () => void) =>
        begin(() => {
          last = cursor.primaryKey;
          onNext();
        }).catch((error: unknown) => {
          if (!mayBeUnreadable(error)) throw error;
          return byKeys(last, error).then((keys) => {
            if (keys === null) return undefined;
            // Whoever steps the cursor goes on holding the one it was given.
            Object.defineProperties(cursor, passedOnTo(keys));
            return keys.start(onNext);
          });
        });
      return Object.assign(cursor, { start });
    },
    (error: unknown) => {
      if (!mayBeUnreadable(error)) throw error;
      return byKeys(undefined, error);
    },
  );
}

const steps = ["continue", "continuePrimaryKey", "advance", "stop", "fail"] as const;
const places = ["key", "primaryKey", "value", "done"] as const;

function passedOnTo(cursor: DBCoreCursor): PropertyDescriptorMap {
  const step =
    (name: (typeof steps)[number]) =>
    (...given: unknown[]) =>
      (cursor[name] as (...given: unknown[]) => void)(...given);
  return Object.fromEntries([
    ...steps.map((name) => [name, { value: step(name) }] as const),
    ...places.map((name) => [name, { get: () => cursor[name] }] as const),
  ]);
}
