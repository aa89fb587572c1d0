import { type Id, type Lap, type Run, type Session, type TableName, tableNames } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { isLive } from "./ranges.ts";

/** A deleted row that can be brought back. */
export interface DeletedRow {
  readonly table: TableName;
  readonly id: Id;
  readonly deletedAt: number;
  readonly row: Session | Run | { readonly id: Id };
}

/** Deleted rows of every table, the last deleted first. For the Data place: small tables are read whole. */
export async function deletedRows(book: ReadOnlyLogbook): Promise<DeletedRow[]> {
  const found = await Promise.all(
    tableNames.map(async (table) => {
      const rows =
        table === "runs" || table === "sessions"
          ? await book.tables[table].orderBy("deletedAt").toArray()
          : await book.tables[table].toArray();
      return rows.flatMap((row) =>
        row.deletedAt === undefined ? [] : [{ table, id: row.id, deletedAt: row.deletedAt, row }],
      );
    }),
  );
  return found.flat().sort((a, b) => b.deletedAt - a.deletedAt);
}

/** Deleted laps of a session's runs, the last deleted first. */
export function deletedLaps(runs: readonly Run[]): { readonly runId: Id; readonly lap: Lap }[] {
  return runs
    .flatMap((run) => run.laps.filter((lap) => !isLive(lap)).map((lap) => ({ runId: run.id, lap })))
    .sort((a, b) => (b.lap.deletedAt ?? 0) - (a.lap.deletedAt ?? 0));
}

/** Runs that are not deleted under a session that is, which only a merge can make. Reads deleted sessions' runs only. */
export async function strandedRuns(book: ReadOnlyLogbook): Promise<Run[]> {
  const sessions = await book.tables.sessions.orderBy("deletedAt").primaryKeys();
  const runs = await book.tables.runs.where("sessionId").anyOf(sessions).toArray();
  return runs.filter(isLive);
}
