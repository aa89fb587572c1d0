import { type CalendarDate, daysBetween, type Figure, type Target } from "#domain";
import { type ComboReview, type TargetProgress, targetProgress } from "#stats";
import { type DatedTime, drivenFor, isMeasured, timesOf } from "./targetFigures.ts";

/** How it stands with a target. */
export type Standing =
  /** Times no longer compare with those it was set for. */
  | { readonly kind: "older page" }
  /** No figure of its kind is kept up here. */
  | { readonly kind: "not measured" }
  /** `daysLate` is above 0 where its date had passed. */
  | { readonly kind: "reached"; readonly on: CalendarDate; readonly daysLate: number }
  /** The figure had come there before it was set. */
  | { readonly kind: "reached before"; readonly on: CalendarDate }
  /** `closest` is the best figure from its setting to its date; absent where there was none. */
  | { readonly kind: "missed"; readonly closest: DatedTime | undefined }
  /** `daysLeft` is absent for a target without a date. */
  | { readonly kind: "open"; readonly daysLeft: number | undefined };

/** A target with its figures, ms. */
export interface TargetState {
  readonly standing: Standing;
  /** The figure now. */
  readonly now: DatedTime | undefined;
  readonly progress: Figure<TargetProgress>;
}

/**
 * Where a target stands today.
 * @param review of its combo over all time
 * @param pageFrom beginning of the combo's present page
 */
export function targetState(
  target: Target,
  review: ComboReview,
  pageFrom: number,
  today: CalendarDate,
): TargetState {
  const { kind, value, start, setAt } = target;
  const isOlder = setAt < pageFrom;
  const times = isMeasured(kind) && !isOlder ? timesOf(review, kind) : [];
  const now = times.at(-1);
  const progress = targetProgress(value, now?.surelyMs, start);
  if (isOlder) return { standing: { kind: "older page" }, now, progress };
  if (!isMeasured(kind)) return { standing: { kind: "not measured" }, now, progress };
  return { standing: standingOf(target, times, drivenFor(review, kind), today), now, progress };
}

function standingOf(
  target: Target,
  times: readonly DatedTime[],
  driven: readonly DatedTime[],
  today: CalendarDate,
): Standing {
  const { value, by, setAt } = target;
  const before = times.findLast(({ at }) => at < setAt);
  if (before !== undefined && before.surelyMs <= value) return { kind: "reached before", on: before.date };
  const reached = times.find(({ at, surelyMs }) => at >= setAt && surelyMs <= value);
  if (reached !== undefined) {
    const late = by === undefined ? 0 : daysBetween(by, reached.date);
    return { kind: "reached", on: reached.date, daysLate: Math.max(0, late) };
  }
  if (by === undefined) return { kind: "open", daysLeft: undefined };
  if (by >= today) return { kind: "open", daysLeft: daysBetween(today, by) };
  const [closest] = driven
    .filter(({ at, date }) => at >= setAt && date <= by)
    .toSorted((a, b) => a.surelyMs - b.surelyMs);
  return { kind: "missed", closest };
}
