import type { CalendarDate, ReferenceLap, Target } from "#domain";

/** A lap time to be measured against, and where it comes from. */
export interface AccountTarget {
  readonly ms: number;
  readonly from: "session" | "target" | "reference" | "pb";
}

/**
 * What a session's time account is measured against: its own target, else the best or median target whose date lies
 * nearest to the session (one without a date only where none has one), else the newest reference lap, else the
 * personal best before the session.
 * @param targets of the combo, without deleted ones; archived ones do not count
 * @param pbBefore personal best of the page before the session, ms
 * @returns undefined where there is nothing to be measured against
 */
export function accountTarget(
  session: { readonly date: CalendarDate; readonly targetMs?: number | undefined },
  targets: readonly Target[],
  references: readonly ReferenceLap[],
  pbBefore: number | undefined,
): AccountTarget | undefined {
  if (session.targetMs !== undefined) return { ms: session.targetMs, from: "session" };
  const day = Date.parse(session.date);
  const distance = (target: Target) =>
    target.by === undefined ? Number.POSITIVE_INFINITY : Math.abs(Date.parse(target.by) - day);
  const nearest = targets
    .filter(
      (target) => target.archivedAt === undefined && (target.kind === "best" || target.kind === "median"),
    )
    .toSorted((a, b) => compare(distance(a), distance(b)) || b.setAt - a.setAt)[0];
  if (nearest !== undefined) return { ms: nearest.value, from: "target" };
  const reference = references.toSorted((a, b) => b.updatedAt - a.updatedAt)[0];
  if (reference !== undefined) return { ms: reference.ms, from: "reference" };
  return pbBefore === undefined ? undefined : { ms: pbBefore, from: "pb" };
}

function compare(a: number, b: number): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
