import { textMark } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { markOfAll } from "./combos.ts";
import { markOfSessions } from "./sessions.ts";

/**
 * A number that is another one whenever a session, a run or a lap is, and says nothing of when. Reads keys only, a few
 * for each session. Undefined while the logbook has never held a session.
 */
export async function markOfBook(book: ReadOnlyLogbook): Promise<number | undefined> {
  const [sessions, laps, own] = await Promise.all([
    book.tables.sessions.orderBy("updatedAt").limit(1).primaryKeys(),
    markOfAll(book),
    markOfSessions(book),
  ]);
  return sessions.length === 0 ? undefined : textMark(`${laps} ${own}`);
}
