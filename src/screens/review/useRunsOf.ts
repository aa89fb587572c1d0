import { runsOfSession } from "#db";
import type { Id, Run } from "#domain";
import { useRows } from "#live";

/** The runs of the sessions of a list, by session: read for the rows that are shown, and for no others. */
export function useRunsOf(sessionIds: readonly Id[]): ReadonlyMap<Id, readonly Run[]> | undefined {
  return useRows(
    async (book) => {
      const read = sessionIds.map(async (id) => [id, await runsOfSession(book, id)] as const);
      return new Map(await Promise.all(read));
    },
    [sessionIds.join()],
  );
}
