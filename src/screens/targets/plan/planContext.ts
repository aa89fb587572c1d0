import type { CalendarDate, Preferences } from "#domain";
import type { DrivenCombo } from "#live";
import type { PlanDraft, PlanFacts } from "#stats";
import type { ShownPlan } from "./useShownPlan.ts";

/** What all parts of the page are about. */
export interface PlanContext {
  readonly combo: DrivenCombo;
  readonly preferences: Preferences;
  readonly plan: ShownPlan;
  /** What the draft rests on. */
  readonly facts: PlanFacts;
  readonly draft: PlanDraft;
  readonly today: CalendarDate;
}
