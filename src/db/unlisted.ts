import type { CalendarDate } from "#domain";
import { faultOf } from "./fault.ts";
import type { Shelf } from "./shelf.ts";
import { deleteDatabase } from "./shelvedLogbooks.ts";

/** Notes that a database is about to be made that is in no list yet. Entering it in the list ends that. */
export async function noteUnlisted(shelf: Shelf, name: string): Promise<void> {
  try {
    await shelf.unlisted.put({ name, since: shelf.clock() });
  } catch (error) {
    throw faultOf(error, "Restore not begun");
  }
}

/**
 * Deletes databases that were found unlisted on an earlier day already: what a crash left of a restore. No restore goes
 * on so long, and no clock is asked how long ago it was. Nothing that was not noted is touched, so a list that was lost
 * costs no logbook; what another tab still has open waits for the next time. Throws LedgerFault.
 */
export async function deleteUnlisted(shelf: Shelf, today: CalendarDate): Promise<void> {
  const { logbooks, unlisted } = shelf;
  try {
    for (const row of await unlisted.toArray()) {
      const isListed = (await logbooks.get(row.name)) !== undefined;
      if (!isListed && row.seenOn === undefined) await unlisted.put({ ...row, seenOn: today });
      if (!isListed && (row.seenOn ?? today) === today) continue;
      if (!isListed) await deleteDatabase(row.name);
      await unlisted.delete(row.name);
    }
  } catch (error) {
    const fault = faultOf(error, "What a broken restore left behind was not removed");
    if (fault.code !== "closed") throw fault;
  }
}
