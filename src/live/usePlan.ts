import { waitingPlan } from "#db";
import type { CalendarDate, Id, Plan } from "#domain";
import type { FoundPlan } from "./jobs/plan.ts";
import { useFigures } from "./useFigures.ts";
import { useRows } from "./useRows.ts";

/** What is known of a combo's next session. */
export interface NextSession {
  /** The driver's own plan for it; undefined where there is none. */
  readonly own: Plan | undefined;
  /** The draft, for the minutes that the plan says; null where the combo is not there. */
  readonly found: FoundPlan | null;
  readonly isRenewing: boolean;
}

/** The plan of a combo's next session, and the draft of it; undefined until both are known. */
export function usePlan(comboId: Id, today: CalendarDate): NextSession | undefined {
  const waiting = useRows(async (book) => (await waitingPlan(book, comboId)) ?? null, [comboId]);
  const minutes = waiting?.minutes;
  const { value: found, isRenewing } = useFigures("plan", {
    comboId,
    today,
    ...(minutes !== undefined && { minutes }),
  });
  if (waiting === undefined || found === undefined) return undefined;
  return { own: waiting ?? undefined, found, isRenewing };
}
