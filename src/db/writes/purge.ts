import { type Id, type Run, type Stamped, tableNames } from "#domain";
import { pastBadRows } from "../edge/pastBadRows.ts";
import { inTransaction } from "../inTransaction.ts";
import type { Logbook } from "../logbook.ts";
import type { WaitingSince } from "../shelf.ts";
import { refuseUnlessOpen } from "./refuseUnlessOpen.ts";

const notDone = "Deleted rows not removed";

/** Days on which the logbook must have been opened since a deletion before it is for good. */
export const daysKept = 30;

/** What was removed, and what still waits. */
export interface Purged {
  readonly removed: number;
  readonly waiting: WaitingSince;
}

/**
 * Removes for good what was first seen deleted thirty opened days ago: rows, and laps inside runs. The stamps of
 * deletions tell only one deletion from another, so a clock that was wrong makes nothing go sooner and keeps nothing for
 * ever. Reads every run once, so it is a chore for a moment of rest, at most once a day.
 * @param waiting what was given the last time
 * @param day how many days the logbook has been opened on
 */
export async function purgeDeleted(book: Logbook, waiting: WaitingSince, day: number): Promise<Purged> {
  refuseUnlessOpen(book, notDone);
  return pastBadRows(book, () =>
    inTransaction(book.database, tableNames, notDone, async (transaction) => {
      const still = new Map<Id, { readonly deletedAt: number; readonly day: number }>();
      const over = new Set<Id>();
      const look = ({ id, deletedAt }: Pick<Stamped, "id" | "deletedAt">) => {
        if (deletedAt === undefined) return;
        const before = waiting.get(id);
        const since = before?.deletedAt === deletedAt ? before.day : day;
        if (day - since >= daysKept) over.add(id);
        else still.set(id, { deletedAt, day: since });
      };
      for (const table of tableNames)
        await transaction
          .table<Stamped>(table)
          .toCollection()
          .each((row) => {
            look(row);
            if (table === "runs") (row as Run).laps.forEach(look);
          });
      if (over.size === 0) return { removed: 0, waiting: still };
      let removed = 0;
      for (const table of tableNames)
        removed += await transaction
          .table(table)
          .where(":id")
          .anyOf([...over])
          .delete();
      await transaction
        .table<Run>("runs")
        .toCollection()
        .filter((run) => run.laps.some(({ id }) => over.has(id)))
        .modify((run, place) => {
          const laps = run.laps.filter(({ id }) => !over.has(id));
          removed += run.laps.length - laps.length;
          place.value = { ...run, laps };
        });
      return { removed, waiting: still };
    }),
  );
}
