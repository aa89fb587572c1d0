import type { RigTest } from "#domain";

/**
 * The setting of a rig test's run to come: the one that its first unfinished pair lacks, in the pair's order.
 * @returns undefined where every pair has both its runs, or the test has ended
 */
export function nextSetting({ pairs, endedAt }: Pick<RigTest, "pairs" | "endedAt">): "A" | "B" | undefined {
  if (endedAt !== undefined) return undefined;
  for (const { first, runA, runB } of pairs) {
    const lacking = { A: runA === undefined, B: runB === undefined };
    if (lacking[first]) return first;
    const second = first === "A" ? "B" : "A";
    if (lacking[second]) return second;
  }
  return undefined;
}
