import type { ReadOnlyLogbook } from "#db";
import type { CalendarDate, Id, Run } from "#domain";

/** A session as its link says it. */
export interface DatedSession {
  readonly id: Id;
  readonly date: CalendarDate;
}

/** The sessions in which runs were driven, in their order, without deleted ones. */
export async function sessionsOfRuns(book: ReadOnlyLogbook, runs: readonly Run[]): Promise<DatedSession[]> {
  const ids = [...new Set(runs.map(({ sessionId }) => sessionId))];
  return (await book.tables.sessions.bulkGet(ids))
    .flatMap((session) => (session === undefined || session.deletedAt !== undefined ? [] : [session]))
    .sort((a, b) => a.startedAt - b.startedAt)
    .map(({ id, date }) => ({ id, date }));
}
