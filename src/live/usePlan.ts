import { useRef } from "react";
import { planToCome } from "#db";
import type { CalendarDate, Id, Plan } from "#domain";
import type { FoundPlan } from "./jobs/plan.ts";
import { useFigures } from "./useFigures.ts";
import { useRows } from "./useRows.ts";

/** What is known of a combo's next session. */
export interface NextSession {
  /** The driver's own plan for it; undefined where there is none. */
  readonly own: Plan | undefined;
  /** Minutes the driver said there are; undefined where none were said. */
  readonly minutes: number | undefined;
  /** The draft, for those minutes; null where the combo is not there. */
  readonly found: FoundPlan | null;
  readonly isRenewing: boolean;
}

/** The plan of a combo's next session, and the draft of it; undefined until both are known. */
export function usePlan(comboId: Id, today: CalendarDate): NextSession | undefined {
  const toCome = useRows((book) => planToCome(book, comboId), [comboId]);
  const minutes = toCome?.minutes;
  const figures = useFigures(
    "plan",
    { comboId, today, ...(minutes !== undefined && { minutes }) },
    toCome === undefined,
  );
  // While a draft for other minutes is worked out the one before stands.
  const last = useRef<{ readonly comboId: Id; readonly found: FoundPlan | null }>(undefined);
  if (figures.value !== undefined) last.current = { comboId, found: figures.value };
  const found = last.current?.comboId === comboId ? last.current.found : undefined;
  if (toCome === undefined || found === undefined) return undefined;
  return { own: toCome.own, minutes, found, isRenewing: figures.isRenewing };
}
