import { deleteUnlisted } from "#db";
import { practiceDay } from "#domain";
import type { Opened, Surroundings } from "#live";
import { purgeOnceADay } from "./purgeOnceADay.ts";

/** Removes for good what was deleted long ago, and what a crash left behind. Throws LedgerFault. */
export async function removeForGood(open: Opened & { readonly surroundings: Surroundings }): Promise<void> {
  const { surroundings, shelf } = open;
  const today = practiceDay(surroundings.clock(), surroundings.zone(), 4);
  await Promise.all([purgeOnceADay(open, surroundings), deleteUnlisted(shelf, today)]);
}
