import type { DBCore, DBCoreTable, Dexie } from "dexie";
import { isSayable } from "#domain";

/** Below all that Dexie itself lays over the browser's database, so that live queries and writes see mended rows. */
const lowest = -2;

/** Whether a value of a field can be used, and what is handed on in place of one that cannot. */
type Mend = readonly [isRight: (value: unknown) => boolean, instead: () => unknown];
type Row = Readonly<Record<string, unknown>> | undefined;

const isText = (value: unknown) => typeof value === "string";
const isCount = (value: unknown) => Number.isInteger(value) && (value as number) >= 0;
const isDay = (value: unknown) => typeof value === "string" && /^\d{4}-\d\d-\d\d$/.test(value);
const isDays = (value: unknown) => Array.isArray(value) && value.every(isDay);
const isMap = (value: unknown) => value instanceof Map;
const isObject = (value: unknown) =>
  typeof value === "object" && value !== null && Object.values(value).every(isText);

const or = (isRight: Mend[0], instead: Mend[1]): Mend => [isRight, instead];
/** Absent where it cannot be used. */
const orNone = (isRight: Mend[0]): Mend => [
  (value) => value === undefined || isRight(value),
  () => undefined,
];
const oneOf = (...words: readonly string[]): Mend[0] => {
  return (value) => words.includes(value as string);
};
const zero = () => 0;
const noText = () => "";

/**
 * What the page needs of each row of the shelf. None of it was typed but titles and drafts, so a value that cannot be right is
 * gone around in its place: no logbook is out of reach because the list of logbooks is damaged.
 */
const mends: Readonly<Record<string, Readonly<Record<string, Mend>>>> = {
  logbooks: {
    title: or(isText, () => "My logbook"),
    kind: or(oneOf("own", "demo"), () => "own"),
    createdAt: or(isSayable, zero),
    lastOpened: or(isSayable, zero),
    turn: orNone(isCount),
    lastBackupAt: orNone(isSayable),
    lapsSinceBackup: or(isCount, zero),
    openedOn: or(isDays, () => []),
    daysOpened: orNone(isCount),
    purgedOn: orNone(isDay),
    toldAhead: orNone(isSayable),
  },
  drafts: { text: or(isText, noText), tab: orNone(isText), at: orNone(isSayable) },
  kept: {
    title: or(isText, noText),
    madeAt: or(isSayable, zero),
    n: orNone(isCount),
    mark: orNone(Number.isFinite),
    openDay: orNone(isCount),
    why: or(oneOf("session", "merge", "replace"), () => "replace"),
    sessions: or(isCount, zero),
    laps: or(isCount, zero),
    bytes: or(isCount, zero),
  },
  folders: {
    tag: or(isText, noText),
    lastGoodAt: orNone(isSayable),
    lastFile: orNone(isText),
    stopped: orNone(isText),
    seen: or(isObject, () => ({})),
  },
  unlisted: { since: or(isSayable, zero), seenOn: orNone(isDay) },
  sent: { at: or(isSayable, zero), marks: or(isMap, () => new Map()) },
  deleted: { waiting: or(isMap, () => new Map()) },
};

/** Has the shelf hand on only what can be used: see above. */
export function mendShelf(database: Dexie): void {
  database.use({
    stack: "dbcore",
    name: "mendShelf",
    level: lowest,
    create: (core): Partial<DBCore> => ({
      table: (name) => {
        const fields = Object.entries(mends[name] ?? {});
        return mendedIn(core.table(name), (row) => mended(fields, row));
      },
    }),
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
        .then((answer) => (request.values === true ? { result: answer.result.map(mend) } : answer)),
  } as DBCoreTable;
}

function mended(fields: readonly (readonly [string, Mend])[], row: Row): Row {
  if (row === undefined) return row;
  const wrong = fields.filter(([field, [isRight]]) => !isRight(row[field]));
  if (wrong.length === 0) return row;
  return { ...row, ...Object.fromEntries(wrong.map(([field, [, instead]]) => [field, instead()])) };
}
