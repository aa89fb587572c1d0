import type { Id, RigTest, Run, RunOfTest } from "#domain";

/** A run of a rig test with its place in it. */
export interface RunInTest {
  readonly run: Run;
  readonly place: RunOfTest;
}

/**
 * The runs of a rig test with their places, in the order they were driven. A run says so itself (`run.rigTest`); in old
 * rows the test names its runs.
 * @param runs any runs, without deleted ones
 */
export function testRuns({ id, pairs }: Pick<RigTest, "id" | "pairs">, runs: readonly Run[]): RunInTest[] {
  const named = new Map<Id, RunOfTest>();
  pairs.forEach(({ runA, runB }, index) => {
    if (runA !== undefined) named.set(runA, { id, pair: index + 1, side: "A" });
    if (runB !== undefined) named.set(runB, { id, pair: index + 1, side: "B" });
  });
  return runs
    .flatMap((run): RunInTest[] => {
      const place = run.rigTest === undefined ? named.get(run.id) : run.rigTest;
      return place?.id === id ? [{ run, place }] : [];
    })
    .sort(({ run: a }, { run: b }) => a.startedAt - b.startedAt || a.n - b.n || (a.id < b.id ? -1 : 1));
}
