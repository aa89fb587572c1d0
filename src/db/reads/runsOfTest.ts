import { Dexie } from "dexie";
import type { RigTest, Run } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { isLive } from "./ranges.ts";

/** Days by which a run may seem to be older than its test: another device's clock may stand behind. */
const MONTH_MS = 31 * 86_400_000;

/**
 * The runs of a rig test, oldest first: those that name it, and those that an old row names. Of the combo's history only what
 * was driven since the test was planned is read, with a month to spare.
 */
export async function runsOfTest(
  book: ReadOnlyLogbook,
  { id, comboId, createdAt, pairs }: RigTest,
): Promise<Run[]> {
  const { runs } = book.tables;
  const named = pairs.flatMap(({ runA, runB }) => [runA, runB]).filter((run) => run !== undefined);
  const [old, own] = await Promise.all([
    runs.bulkGet(named),
    runs
      .where("[comboId+startedAt]")
      .between([comboId, createdAt - MONTH_MS], [comboId, Dexie.maxKey])
      .filter((run) => run.rigTest?.id === id && isLive(run))
      .toArray(),
  ]);
  const byId = new Map([...old, ...own].flatMap((run) => (run && isLive(run) ? [[run.id, run]] : [])));
  return [...byId.values()].sort((a, b) => a.startedAt - b.startedAt || a.n - b.n);
}
