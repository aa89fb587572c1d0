import { type Id, lapsInOrder, type Run } from "#domain";
import { longestSittingMs } from "../digest/sessionDigest.ts";

/** More usual laps than this between two laps look like a run whose end was forgotten. */
const usualLaps = 3;

/**
 * The time between a lap and the one before it in its run, where that is too long for one run: more than three usual
 * laps. It goes by when the two were typed, so both must have been typed one by one.
 * @param usualMs the usual lap in the run, ms
 * @returns ms; undefined where there is no such gap, where laps beside it came in a block (pasted) or from a table, and
 * where a clock that went back or jumped by more than a day says nothing
 */
export function longGap(run: Pick<Run, "laps">, lapId: Id, usualMs: number | undefined): number | undefined {
  const laps = lapsInOrder(run);
  const at = laps.findIndex(({ id }) => id === lapId);
  const [before, lap] = [laps[at - 1], laps[at]];
  if (before === undefined || lap === undefined || usualMs === undefined) return undefined;
  const isTypedAlone = ({ source, createdAt }: typeof lap) =>
    source !== "imported" && laps.filter((other) => other.createdAt === createdAt).length === 1;
  if (!isTypedAlone(before) || !isTypedAlone(lap)) return undefined;
  const gap = lap.createdAt - before.createdAt;
  return gap > usualLaps * usualMs && gap <= longestSittingMs ? gap : undefined;
}
