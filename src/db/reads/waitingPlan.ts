import type { Id, Plan } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { isLive, within } from "./ranges.ts";
import { plansOfCombo } from "./rows.ts";

/** So many of a combo's sessions are looked at: a plan that was begun has been begun lately. */
const LATEST = 10;

/**
 * The plan of a combo's next session: the one changed last, while no session has its lines. Nothing is deleted when a session
 * begins with it, so taking that back brings the plan back.
 */
export async function waitingPlan(book: ReadOnlyLogbook, comboId: Id): Promise<Plan | undefined> {
  const [newest] = await plansOfCombo(book, comboId);
  if (newest === undefined) return undefined;
  const ids = new Set(newest.lines.map(({ id }) => id));
  const latest = await within(book.tables.sessions, "[comboId+startedAt]", comboId)
    .reverse()
    .filter(isLive)
    .limit(LATEST)
    .toArray();
  const isBegun = latest.some(({ plan = [] }) => plan.some(({ id }) => id !== undefined && ids.has(id)));
  return isBegun ? undefined : newest;
}
