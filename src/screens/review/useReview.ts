import { useState } from "react";
import type { CalendarDate, Id } from "#domain";
import { useFigures } from "#live";
import type { Period } from "#state/address.ts";
import type { ComboReview } from "#stats";
import { type Days, daysOf } from "./periods.ts";

/** Figures of a combo, and the period they are of. */
export interface Reviewed {
  readonly comboId: Id;
  readonly period: Period;
  readonly days: Days;
  readonly review: ComboReview;
}

/**
 * The review of a combo. While that of another period is being worked out the one before stays, so that nothing jumps;
 * undefined until the combo has one.
 */
export function useReview(
  comboId: Id,
  period: Period,
  today: CalendarDate,
): { readonly reviewed: Reviewed | undefined; readonly isRenewing: boolean } {
  const days = daysOf(period, today);
  const figures = useFigures("comboReview", { comboId, period: days, today });
  const [kept, setKept] = useState<Reviewed>();
  if (figures.value !== undefined && figures.value !== kept?.review)
    setKept({ comboId, period, days, review: figures.value });
  return { reviewed: kept?.comboId === comboId ? kept : undefined, isRenewing: figures.isRenewing };
}
