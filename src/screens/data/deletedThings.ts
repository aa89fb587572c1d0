import {
  bringBack,
  bringBackLap,
  type Change,
  type DeletedRow,
  deletedLaps,
  deletedRows,
  type Logbook,
  namesOfDeleted,
  type ReadOnlyLogbook,
  runsWithDeletedLaps,
  strandedRuns,
} from "#db";
import type { Id, Session } from "#domain";
import { type DeletedWords, ofSession, sayDeletedLap, sayDeletedRow, sayRun } from "./deletedWords.ts";

/** Something deleted that can still be brought back. */
export interface DeletedThing extends DeletedWords {
  readonly id: Id;
  /** Epoch ms; undefined for a run left behind by a merge, which was never deleted itself. */
  readonly deletedAt: number | undefined;
  readonly bringBack: (book: Logbook) => Promise<Change>;
}

/** Deleted with its session: stamps of one deed differ by a little. */
const together = 1000;

/**
 * All that was deleted and can be brought back, the last deleted first. Runs that went with their session stand under
 * the session's name; runs that are there while their session is not, which only a merge can make, come first.
 */
export async function deletedThings(book: ReadOnlyLogbook): Promise<DeletedThing[]> {
  const [rows, holders, stranded] = await Promise.all([
    deletedRows(book),
    runsWithDeletedLaps(book),
    strandedRuns(book),
  ]);
  const strandedIds = new Set(stranded.map(({ id }) => id));
  const runs = rows.flatMap((deleted) => (deleted.table === "runs" ? [deleted.row] : []));
  const names = await namesOfDeleted(book, [...runs, ...holders, ...stranded]);

  const left = stranded.map((run): DeletedThing => {
    const what = `Run ${sayRun(run, names)}, left behind when its session was deleted`;
    const of = ofSession(run, names);
    const back = { table: "sessions", id: run.sessionId } as const;
    return { id: run.id, what, of, deletedAt: undefined, bringBack: (to) => bringBack(to, back) };
  });
  const things = rows
    .filter((deleted) => !wentWithSession(deleted, names.sessions))
    .map((deleted): DeletedThing => {
      const { table, id, deletedAt } = deleted;
      const words = sayDeletedRow(deleted, names);
      return { id, ...words, deletedAt, bringBack: (to) => bringBack(to, { table, id }) };
    });
  const laps = holders
    .filter(({ id }) => !strandedIds.has(id))
    .flatMap((run) =>
      deletedLaps([run]).map(({ runId, lap }): DeletedThing => {
        const words = sayDeletedLap(lap, run, names);
        const back = { runId, lapId: lap.id };
        return { id: lap.id, ...words, deletedAt: lap.deletedAt, bringBack: (to) => bringBackLap(to, back) };
      }),
    );
  const lastFirst = [...things, ...laps].sort((a, b) => (b.deletedAt ?? 0) - (a.deletedAt ?? 0));
  return [...left, ...lastFirst];
}

function wentWithSession(deleted: DeletedRow, sessions: ReadonlyMap<Id, Session>): boolean {
  if (deleted.table !== "runs") return false;
  const at = sessions.get(deleted.row.sessionId)?.deletedAt;
  return at !== undefined && Math.abs(at - deleted.deletedAt) < together;
}
