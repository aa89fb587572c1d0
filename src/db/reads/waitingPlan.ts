import type { Id, Plan } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { isLive, within } from "./ranges.ts";
import { plansOfCombo } from "./rows.ts";

/** So many of a combo's sessions are looked at: a plan that was begun has been begun lately. */
const LATEST = 10;

/** What is kept for a combo's next session. */
export interface PlanToCome {
  /** The row changed last, while no session has its lines. Without lines it only says how many minutes there are. */
  readonly row: Plan | undefined;
  /** That row where it has lines: a plan of the driver's own. */
  readonly own: Plan | undefined;
  /** Minutes that were last said for the combo. */
  readonly minutes: number | undefined;
}

/** The plan of a combo's next session and the minutes there are for it, which go on from the plan before. */
export async function planToCome(book: ReadOnlyLogbook, comboId: Id): Promise<PlanToCome> {
  const [newest] = await plansOfCombo(book, comboId);
  if (newest === undefined) return { row: undefined, own: undefined, minutes: undefined };
  const row = (await isBegun(book, comboId, newest)) ? undefined : newest;
  return { row, own: row !== undefined && row.lines.length > 0 ? row : undefined, minutes: newest.minutes };
}

/**
 * The plan of a combo's next session: the one changed last, while no session has its lines. Nothing is deleted when a session
 * begins with it, so taking that back brings the plan back.
 */
export async function waitingPlan(book: ReadOnlyLogbook, comboId: Id): Promise<Plan | undefined> {
  return (await planToCome(book, comboId)).own;
}

async function isBegun(book: ReadOnlyLogbook, comboId: Id, plan: Plan): Promise<boolean> {
  const ids = new Set(plan.lines.map(({ id }) => id));
  const latest = await within(book.tables.sessions, "[comboId+startedAt]", comboId)
    .reverse()
    .filter(isLive)
    .limit(LATEST)
    .toArray();
  return latest.some(({ plan: lines = [] }) => lines.some(({ id }) => id !== undefined && ids.has(id)));
}
