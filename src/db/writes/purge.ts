import { type Run, type TableName, tableNames } from "#domain";
import { pastBadRows } from "../edge/pastBadRows.ts";
import { faultOf } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { ShelvedLogbook } from "../shelf.ts";
import { refuseUnlessOpen } from "./refuseUnlessOpen.ts";

/** Days on which the logbook must have been opened since a deletion before it is for good. */
const daysKept = 30;

/**
 * The instant before which deletions may be made final: the start, in UTC, of the earliest of the last 31 opened days;
 * undefined while there have been fewer. Taking the earliest, a clock that was wrong on one of them cannot purge
 * anything too soon.
 */
export function purgeBefore({ openedOn }: Pick<ShelvedLogbook, "openedOn">): number | undefined {
  const days = openedOn.slice(-daysKept - 1);
  const [earliest] = [...days].sort();
  return days.length <= daysKept ? undefined : Date.parse(`${earliest}T00:00:00Z`);
}

/**
 * Removes for good what was deleted before an instant: rows, and laps inside runs. Gives the number removed. Reads
 * every run once, so it is a chore for a moment of rest, at most once a day.
 */
export async function purgeDeleted(book: Logbook, before: number): Promise<number> {
  const isOver = (row: { readonly deletedAt?: number }) => (row.deletedAt ?? before) < before;
  refuseUnlessOpen(book, "Deleted rows not removed");
  const rw: TableName[] = [...tableNames];
  try {
    return await pastBadRows(book, () =>
      book.database.transaction("rw", rw, async (transaction) => {
        let removed = 0;
        for (const table of tableNames)
          removed += await transaction.table(table).toCollection().filter(isOver).delete();
        await transaction
          .table<Run>("runs")
          .toCollection()
          .filter((run) => run.laps.some(isOver))
          .modify((run, place) => {
            const laps = run.laps.filter((lap) => !isOver(lap));
            removed += run.laps.length - laps.length;
            place.value = { ...run, laps };
          });
        return removed;
      }),
    );
  } catch (error) {
    throw faultOf(error, "Deleted rows not removed");
  }
}
