import type { CalendarDate, ReferenceLap, Target } from "#domain";
import type { PageSpan } from "./pages.ts";
import { targetsInForce } from "./targetsInForce.ts";
import { targetThen } from "./targetThen.ts";

/** A lap time to be measured against, and where it comes from. */
export interface AccountTarget {
  readonly ms: number;
  readonly from: "session" | "target" | "reference" | "pb";
  /** Of a target: which kind of lap it is for. */
  readonly kind?: "best" | "median";
}

/** Any sitting is over by then: what was written down within it was known in the session. Our own choice. */
const halfADay = 12 * 3_600_000;

/** All that a session may be measured against. */
export interface MeasuredBy {
  readonly session: {
    readonly date: CalendarDate;
    readonly startedAt: number;
    readonly targetMs?: number | undefined;
  };
  /** The page the session stands on. */
  readonly page: PageSpan;
  /** Targets and reference laps of the combo, without deleted ones. */
  readonly targets: readonly Target[];
  readonly references: readonly ReferenceLap[];
  /** Personal best of the page before the session, ms. */
  readonly pbBefore: number | undefined;
}

/**
 * What a session's time account is measured against: its own target, else the best-lap or usual-lap target in force on its
 * day, as it was wanted then, whose date lies nearest (one without a date only where none has one; of one date the one set last), else the newest
 * reference lap known by then, else the personal best before the session. Our methods, §3.
 * @returns undefined where there is nothing to be measured against
 */
export function accountTarget({
  session,
  page,
  targets,
  references,
  pbBefore,
}: MeasuredBy): AccountTarget | undefined {
  const { startedAt, targetMs } = session;
  if (targetMs !== undefined) return { ms: targetMs, from: "session" };
  const inForce = wantedThen({ session, page, targets }).flatMap(({ kind, value, by }) =>
    kind === "best" || kind === "median" ? [{ kind, value, by }] : [],
  );
  const nearest = inForce.findLast(({ by }) => by === inForce[0]?.by);
  if (nearest !== undefined) return { ms: nearest.value, from: "target", kind: nearest.kind };
  const reference = newestReference(references, startedAt + halfADay);
  if (reference !== undefined) return { ms: reference.ms, from: "reference" };
  return pbBefore === undefined ? undefined : { ms: pbBefore, from: "pb" };
}

/** The lap times wanted as a best lap on the session's day, as they were wanted then, ms. */
export function bestLapTargets(measured: Targeted): number[] {
  return wantedThen(measured).flatMap(({ kind, value }) => (kind === "best" ? [value] : []));
}

type Targeted = Pick<MeasuredBy, "session" | "page" | "targets">;

function wantedThen({ session: { date, startedAt }, page, targets }: Targeted): Target[] {
  const then = targets.map((target) => targetThen(target, startedAt));
  return targetsInForce(then, page, { from: date, to: date, at: startedAt });
}

/**
 * The reference lap that counts: the one written down last.
 * @param knownBy epoch ms; later ones were not known then
 */
export function newestReference(
  references: readonly ReferenceLap[],
  knownBy = Number.POSITIVE_INFINITY,
): ReferenceLap | undefined {
  return references
    .filter(({ createdAt }) => createdAt <= knownBy)
    .toSorted((a, b) => b.updatedAt - a.updatedAt)[0];
}
