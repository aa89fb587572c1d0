import { type CalendarDate, comboName, type Id } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import type { UnreadableRow } from "../unreadable.ts";
import { comboWithNames } from "./combos.ts";
import { within } from "./ranges.ts";

/** A run that is there and cannot be read: what its keys say of it. */
export interface UnreadableRun {
  readonly id: Id;
  readonly n: number;
}

/**
 * Runs of a session that a read of it has just gone around, in order. Asks the browser only where some run is known
 * to be unreadable.
 */
export async function unreadableRuns(book: ReadOnlyLogbook, sessionId: Id): Promise<UnreadableRun[]> {
  const known = new Set(book.unreadable.get().flatMap(({ table, id }) => (table === "runs" ? [id] : [])));
  if (known.size === 0) return [];
  const runs: UnreadableRun[] = [];
  await within(book.tables.runs, "[sessionId+n]", sessionId).eachKey((key: unknown, { primaryKey: id }) => {
    if (known.has(id)) runs.push({ id, n: (key as readonly [Id, number])[1] });
  });
  return runs;
}

/** What is known of a row that cannot be read, from its keys and the rows around it. */
export interface AboutUnreadable extends UnreadableRow {
  /** The session it is, or belongs to. */
  readonly sessionId?: Id;
  /** Day of that session; absent where the session itself cannot be read. */
  readonly date?: CalendarDate;
  /** Start of a session that cannot be read itself. */
  readonly startedAt?: number;
  readonly comboName?: string;
}

/** Says where an unreadable row belongs. Reads one key for each row of its table. */
export async function aboutUnreadable(book: ReadOnlyLogbook, row: UnreadableRow): Promise<AboutUnreadable> {
  const { table, id } = row;
  if (table === "sessions") {
    const key = await keyOf(book, "sessions", "[comboId+startedAt]", id);
    return key ? { ...row, sessionId: id, startedAt: key[1], ...(await named(book, key[0])) } : row;
  }
  const sessionId = table === "digests" ? id : (await keyOf(book, "runs", "[sessionId+n]", id))?.[0];
  if (sessionId === undefined) return row;
  const session = await book.tables.sessions.get(sessionId);
  return {
    ...row,
    sessionId,
    ...(session && { date: session.date, ...(await named(book, session.comboId)) }),
  };
}

async function named(book: ReadOnlyLogbook, comboId: Id): Promise<{ readonly comboName?: string }> {
  const names = await comboWithNames(book, comboId);
  return names ? { comboName: comboName(names) } : {};
}

/** The key of one row in an index of an id and a number. */
async function keyOf(
  book: ReadOnlyLogbook,
  table: "sessions" | "runs",
  index: string,
  id: Id,
): Promise<readonly [Id, number] | undefined> {
  let found: readonly [Id, number] | undefined;
  await book.tables[table].orderBy(index).eachKey((key: unknown, { primaryKey }) => {
    if (primaryKey === id) found = key as readonly [Id, number];
  });
  return found;
}
