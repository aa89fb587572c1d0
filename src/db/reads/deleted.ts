import { runNumber } from "#combo";
import {
  comboName,
  type Id,
  type Lap,
  type Run,
  type Session,
  type TableName,
  type Tables,
  tableNames,
} from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { isLive } from "./ranges.ts";

/** A deleted row that can be brought back. */
export type DeletedRow = {
  readonly [T in TableName]: {
    readonly table: T;
    readonly id: Id;
    readonly deletedAt: number;
    readonly row: Tables[T];
  };
}[TableName];

/** Deleted rows of every table, the last deleted first. For the Data place: small tables are read whole. */
export async function deletedRows(book: ReadOnlyLogbook): Promise<DeletedRow[]> {
  const found = await Promise.all(
    tableNames.map(async (table) => {
      const rows =
        table === "runs" || table === "sessions"
          ? await book.tables[table].orderBy("deletedAt").toArray()
          : await book.tables[table].toArray();
      return rows.flatMap((row) =>
        row.deletedAt === undefined
          ? []
          : [{ table, id: row.id, deletedAt: row.deletedAt, row } as DeletedRow],
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

/** Runs that are not deleted and hold deleted laps. Reads every run once, so it is for when it is asked for. */
export function runsWithDeletedLaps(book: ReadOnlyLogbook): Promise<Run[]> {
  return book.tables.runs
    .toCollection()
    .filter((run) => isLive(run) && run.laps.some((lap) => !isLive(lap)))
    .toArray();
}

/** Runs that are not deleted under a session that is, which only a merge can make. Reads deleted sessions' runs only. */
export async function strandedRuns(book: ReadOnlyLogbook): Promise<Run[]> {
  const sessions = await book.tables.sessions.orderBy("deletedAt").primaryKeys();
  const runs = await book.tables.runs.where("sessionId").anyOf(sessions).toArray();
  return runs.filter(isLive);
}

/** What names a deleted row: every combo's name, and the sessions of some runs, deleted ones too, and what these are called by. */
export interface NamesOfDeleted {
  readonly combos: ReadonlyMap<Id, string>;
  readonly sessions: ReadonlyMap<Id, Session>;
  readonly numberOf: (run: Run) => number;
}

/** Reads what names deleted rows and these runs. */
export async function namesOfDeleted(book: ReadOnlyLogbook, runs: readonly Run[]): Promise<NamesOfDeleted> {
  const { cars, tracks, layouts, combos } = book.tables;
  const sessionIds = [...new Set(runs.map(({ sessionId }) => sessionId))];
  const [carRows, trackRows, layoutRows, comboRows, sessionRows, runRows] = await Promise.all([
    cars.toArray(),
    tracks.toArray(),
    layouts.toArray(),
    combos.toArray(),
    book.tables.sessions.bulkGet(sessionIds),
    book.tables.runs.where("sessionId").anyOf(sessionIds).toArray(),
  ]);
  const none = { name: "" };
  const byId = <R extends { readonly id: Id }>(rows: readonly R[]) =>
    new Map(rows.map((row) => [row.id, row]));
  const [carOf, trackOf, layoutOf] = [byId(carRows), byId(trackRows), byId(layoutRows)];
  const named = comboRows.map(({ id, carId, layoutId }) => {
    const layout = layoutOf.get(layoutId);
    const track = (layout && trackOf.get(layout.trackId)) ?? none;
    return [id, comboName({ car: carOf.get(carId) ?? none, layout: layout ?? none, track })] as const;
  });
  const liveRuns = runRows.filter(isLive);
  return {
    combos: new Map(named),
    sessions: byId(sessionRows.filter((row) => row !== undefined)),
    numberOf: (run) =>
      runNumber(
        run,
        liveRuns.filter(({ sessionId }) => sessionId === run.sessionId),
      ),
  };
}
