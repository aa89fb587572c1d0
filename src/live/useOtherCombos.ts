import { daysDriven } from "#db";
import { type Id, sayDate } from "#domain";
import { useUntil } from "./logbookContext.ts";
import type { DrivenCombo } from "./useCombos.ts";
import { useRows } from "./useRows.ts";

/** A combo to look at instead, and when it was driven last. */
export interface OtherCombo {
  readonly id: Id;
  readonly name: string;
  readonly detail: string;
}

/** All combos but one, in their order, with the day each was driven last. */
export function useOtherCombos(combos: readonly DrivenCombo[], but: Id): readonly OtherCombo[] {
  const until = useUntil();
  const days = useRows((book) => daysDriven(book, until), [until]);
  const driven = ({ id, drivenAt }: DrivenCombo) => {
    const day = days?.get(id);
    if (day !== undefined) return `last driven ${sayDate(day)}`;
    return drivenAt === undefined ? "not driven yet" : "";
  };
  return combos
    .filter(({ id }) => id !== but)
    .map((combo) => ({ id: combo.id, name: combo.name, detail: driven(combo) }));
}
