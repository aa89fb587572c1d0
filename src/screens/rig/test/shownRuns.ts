import type { CalendarDate } from "#domain";
import type { RigTestPage } from "#live";
import type { DrivenRun, WhyAside } from "#stats";

/** A run of a test as its page lists it. */
export interface ShownRun extends DrivenRun {
  readonly pair: number;
  readonly side: "A" | "B";
  /** Why it does not count; undefined where it does. */
  readonly why: WhyAside | undefined;
  /** Day of its session; undefined where that is gone. */
  readonly date: CalendarDate | undefined;
}

/** The runs of a test in the order they were driven, those that count and those that do not. */
export function shownRuns({
  report: { progress },
  sessions,
  numbers,
}: Pick<RigTestPage, "report" | "sessions" | "numbers">): ShownRun[] {
  const place = new Map(sessions.map(({ id, date }, index) => [id, { date, index }]));
  const counted = progress.pairs.flatMap(({ n, a, b }) => [
    ...(a ? [{ ...a, pair: n, side: "A" as const, why: undefined }] : []),
    ...(b ? [{ ...b, pair: n, side: "B" as const, why: undefined }] : []),
  ]);
  const { inHand } = progress;
  return [...counted, ...progress.voided, ...(inHand ? [{ ...inHand, why: undefined }] : [])]
    .sort((a, b) => (place.get(a.sessionId)?.index ?? 0) - (place.get(b.sessionId)?.index ?? 0) || a.n - b.n)
    .map((run) => ({
      runId: run.runId,
      sessionId: run.sessionId,
      n: numbers[run.runId] ?? run.n,
      laps: run.laps,
      pair: run.pair,
      side: run.side,
      why: run.why,
      date: place.get(run.sessionId)?.date,
    }));
}
