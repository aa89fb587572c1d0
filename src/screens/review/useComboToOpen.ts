import { sessionsSince } from "#db";
import type { CalendarDate } from "#domain";
import { type DrivenCombo, useRows, useUntil } from "#live";
import type { Period } from "#state/address.ts";
import { daysOf } from "./periods.ts";

/** Sessions from which on a combo's weeks can have a trend. */
const enough = 5;

/**
 * The combo to review where none is named: the one driven last of those with enough sessions in the period; where none
 * has, the one driven last. Undefined until it is known, and without combos.
 * @param combos the one driven last first
 */
export function useComboToOpen(
  combos: readonly DrivenCombo[],
  period: Period,
  today: CalendarDate,
): DrivenCombo | undefined {
  const { from } = daysOf(period, today);
  const since = from === undefined ? 0 : Date.parse(from);
  const until = useUntil();
  const counts = useRows((book) => sessionsSince(book, since, until), [since, until]);
  if (counts === undefined) return undefined;
  return combos.find(({ id }) => (counts.get(id) ?? 0) >= enough) ?? combos[0];
}
