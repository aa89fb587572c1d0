import { addDays, type Id, type PlannedRun, type Session, type Stamped } from "#domain";
import type { Evening } from "./evening.ts";
import { instantAt, zone } from "./season.ts";

/** When an evening was driven, and from when on it was written down. */
export function timesOf({ date, clock, isEnteredLater }: Evening): {
  readonly startedAt: number;
  readonly writtenFrom: number;
} {
  const startedAt = instantAt(date, clock);
  return { startedAt, writtenFrom: isEnteredLater ? instantAt(addDays(date, 1), "18:10") : startedAt };
}

/** The row of an evening's session, closed with its note at `writtenTo`. */
export function sessionRow(
  stamped: Stamped,
  comboId: Id,
  evening: Evening,
  plan: readonly PlannedRun[] | undefined,
  writtenTo: number,
): Session {
  const { date, focus, note, conditions, targetMs, isEnteredLater } = evening;
  const { startedAt } = timesOf(evening);
  return {
    ...stamped,
    updatedAt: writtenTo,
    comboId,
    startedAt,
    isTimeOfDayKnown: !isEnteredLater,
    date,
    zone,
    endedAt: isEnteredLater ? startedAt : writtenTo,
    focus,
    note,
    ...(conditions === undefined ? {} : { conditions }),
    ...(targetMs === undefined ? {} : { targetMs }),
    ...(plan === undefined ? {} : { plan }),
  };
}
