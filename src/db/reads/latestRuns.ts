import type { Id, Run } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { isLive, within } from "./ranges.ts";

/** The runs of a combo that began last, the newest first. */
export function latestRuns(book: ReadOnlyLogbook, comboId: Id, count: number): Promise<Run[]> {
  return within(book.tables.runs, "[comboId+startedAt]", comboId)
    .reverse()
    .filter(isLive)
    .limit(count)
    .toArray();
}
