import type { CalendarDate, Target } from "#domain";

/**
 * The order a driver looks for: what is still to be reached, the nearest date first; then dates gone by, the newest
 * first; last what was set on an older page.
 * @param pageFrom beginning of the combo's present page
 */
export function inOrder(targets: readonly Target[], pageFrom: number, today: CalendarDate): Target[] {
  const rank = ({ setAt, by = today }: Target) => (setAt < pageFrom ? 2 : by < today ? 1 : 0);
  return targets.toSorted((a, b) => {
    const [dayA, dayB] = [a.by ?? "9999-12-31", b.by ?? "9999-12-31"];
    const days = dayA < dayB ? -1 : dayA > dayB ? 1 : 0;
    return rank(a) - rank(b) || (rank(a) === 1 ? -days : days) || a.setAt - b.setAt;
  });
}
