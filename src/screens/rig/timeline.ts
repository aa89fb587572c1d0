import { type CalendarDate, type RigSettings, type RigTest, rigOn, rigsInOrder, sayDate } from "#domain";

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

/** One place on the line of time: a record where it began, or a rig test where it ended, or, not over yet, where it began. */
export type Stop =
  | { readonly on: CalendarDate; readonly placed: Placed; readonly test?: undefined }
  | { readonly on: CalendarDate; readonly test: RigTest };

/**
 * Records and tests together, the newest first; a test stands before the records of its last day, which it may have led to.
 * @param records oldest first
 */
export function onOneLine(
  records: readonly Placed[],
  tests: readonly RigTest[],
  dayOf: (moment: number) => CalendarDate,
): readonly Stop[] {
  const stops: readonly Stop[] = [
    ...tests.map((test) => ({ on: dayOf(test.endedAt ?? test.createdAt), test })),
    ...records.map((placed) => ({ on: placed.rig.from, placed })),
  ];
  return stops.toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0)).toReversed();
}
