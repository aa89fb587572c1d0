import { numberedRuns } from "#combo";
import { runsOfSession } from "#db";
import type { Id, Run } from "#domain";
import { useRows } from "./useRows.ts";

/** The runs of one session by the numbers they go by in it. */
export type NumberedRuns = readonly { readonly run: Run; readonly number: number }[];

/** The runs of the sessions of a list, by session: read for the rows that are shown, and for no others. */
export function useRunsOf(sessionIds: readonly Id[]): ReadonlyMap<Id, NumberedRuns> | undefined {
  return useRows(
    async (book) => {
      const read = sessionIds.map(async (id) => [id, numberedRuns(await runsOfSession(book, id))] as const);
      return new Map(await Promise.all(read));
    },
    [sessionIds.join()],
  );
}
