import { type CalendarDate, type RigSettings, rigOn, rigsInOrder, sayDate } from "#domain";

/** A record with its neighbours in time. */
export interface Placed {
  readonly rig: RigSettings;
  readonly before: RigSettings | undefined;
  readonly after: RigSettings | undefined;
  readonly isInForce: boolean;
}

/** Records from the oldest to the newest; of two from one day the one written later holds. */
export function timeline(rigs: readonly RigSettings[], today: CalendarDate): Placed[] {
  const sorted = rigsInOrder(rigs);
  const inForce = rigOn(rigs, today);
  return sorted.map((rig, index) => ({
    rig,
    before: sorted[index - 1],
    after: sorted[index + 1],
    isInForce: rig === inForce,
  }));
}

/** When a record holds: "in force today, since Tue 3 Nov 2026". */
export function sayWhen({ rig, after, isInForce }: Placed, today: CalendarDate): string {
  if (isInForce) return `In force today, since ${sayDate(rig.from)}`;
  if (rig.from > today) return `Not yet in force: from ${sayDate(rig.from)}`;
  return `No longer in force: ${sayDate(rig.from)} to ${after === undefined ? "now" : sayDate(after.from)}`;
}
