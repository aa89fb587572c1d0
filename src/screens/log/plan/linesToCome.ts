import type { Layout, PlannedRun } from "#domain";
import type { NextSession } from "#live";
import { plannedLines, withReasonNow } from "#words";

/**
 * The runs of a combo's next session: the driver's own, else those of the draft. The next run of a rig test that waits stands
 * before a plan that has none of it: Log asks for it before the plan's lines.
 */
export function linesToCome(
  { own, found }: NextSession,
  { corners }: Pick<Layout, "corners">,
): readonly PlannedRun[] {
  const drafted = plannedLines(found?.draft.lines ?? [], corners, counter());
  if (own === undefined) return drafted;
  const lines = own.lines.map((line) => withReasonNow(line, found?.facts));
  const ofTest = drafted.filter(({ rigTest }) => rigTest !== undefined);
  const hasTest = lines.some(({ rigTest }) => rigTest !== undefined);
  return hasTest ? lines : [...ofTest, ...lines];
}

/** Ids by which a page tells its lines apart; those of a session are made when it starts. */
function counter(): () => string {
  let last = 0;
  return () => String(++last);
}
