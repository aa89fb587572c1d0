import type { CalendarDate, Preferences } from "#domain";
import type { DrivenCombo } from "#live";
import type { AroundReview } from "#state/address.ts";

/** What each of the views beside the review of one combo is handed. */
export interface AroundProps {
  readonly address: AroundReview;
  readonly combos: readonly DrivenCombo[];
  readonly preferences: Preferences;
  readonly today: CalendarDate;
}
