import { faultOf } from "./fault.ts";
import type { Shelf } from "./shelf.ts";
import { deleteDatabase } from "./shelvedLogbooks.ts";

/** Longer than any restore goes on. */
const givenUpMs = 86_400_000;

/** Notes that a database is about to be made that is in no list yet. Entering it in the list ends that. */
export async function noteUnlisted(shelf: Shelf, name: string): Promise<void> {
  try {
    await shelf.unlisted.put({ name, since: shelf.clock() });
  } catch (error) {
    throw faultOf(error, "Restore not begun");
  }
}

/**
 * Deletes databases that were noted over a day ago and are still in no list: what a crash left of a restore. Nothing
 * that was not noted is touched, so a list that was lost costs no logbook; what another tab still has open waits for
 * the next time. Throws LedgerFault.
 */
export async function deleteUnlisted(shelf: Shelf): Promise<void> {
  const { logbooks, unlisted, clock } = shelf;
  try {
    for (const { name } of await unlisted.filter(({ since }) => since < clock() - givenUpMs).toArray()) {
      if ((await logbooks.get(name)) === undefined) await deleteDatabase(name);
      await unlisted.delete(name);
    }
  } catch (error) {
    const fault = faultOf(error, "What a broken restore left behind was not removed");
    if (fault.code !== "closed") throw fault;
  }
}
