import type { CalendarDate, Id } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";

/** A record of rig settings and its first day. */
export interface RigRecordDay {
  readonly id: Id;
  readonly from: CalendarDate;
}

/** On which side of a change of the rig a session was driven. */
export type RigSide = "before" | "after" | "both";

/**
 * The side of a session, by what each of its runs with laps was driven with: a record before the change, or the change
 * and later ones. A run that names no record goes by the session's date; one of a rig test is on no side.
 * @param records in their order
 * @param change index of the record that is the change
 */
export function rigSide(
  { date, runs, runFacts }: Pick<SessionDigest, "date" | "runs" | "runFacts">,
  records: readonly RigRecordDay[],
  change: number,
): RigSide {
  const byDate = date >= (records[change]?.from ?? date) ? "after" : "before";
  const driven = runFacts.filter(({ isOfTest }, index) => !isOfTest && runs.includes(index));
  const sides = new Set(
    driven.map(({ rigId }): RigSide => {
      const place = records.findIndex(({ id }) => id === rigId);
      return place < 0 ? byDate : place >= change ? "after" : "before";
    }),
  );
  const [side = byDate] = sides;
  return sides.size > 1 ? "both" : side;
}
