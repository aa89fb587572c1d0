import { addDays, type CalendarDate, type Figure, type Id, type Page } from "#domain";
import { median } from "#numbers";
import type { UsualLap } from "../combo/latestUsual.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { usualDecimals } from "../pace/usualDecimals.ts";
import { type PageSession, pageEvents, pageHistory } from "../period/pageHistory.ts";
import { type StepAtChange, stepAtChange } from "../weeks/stepAtChange.ts";
import { type RigRecordDay, type RigSide, rigSide } from "./rigSide.ts";

/** Days before and after a change whose sessions are set side by side. */
const daysAround = 28;

export interface RigStepsInput {
  readonly combos: readonly {
    readonly comboId: Id;
    readonly digests: readonly SessionDigest[];
    readonly pages: readonly Pick<Page, "from">[];
  }[];
  /** The record of rig settings that began, one of `records`. */
  readonly rigId: Id;
  /** All records in their order, each with its first day. */
  readonly records: readonly RigRecordDay[];
  readonly today: CalendarDate;
}

/** The usual lap of one session. */
export interface SessionUsual {
  readonly sessionId: Id;
  readonly date: CalendarDate;
  readonly usual: UsualLap;
}

/** The sessions of one side in time order, and the median of their usual laps. */
export interface SideOfStep {
  readonly sessions: readonly SessionUsual[];
  readonly usual: UsualLap;
}

/** A session on neither side: driven with both settings, or with the old one again after the new. */
export interface SessionOfNeither {
  readonly sessionId: Id;
  readonly date: CalendarDate;
  readonly why: "both" | "old again";
}

/** One combo about a change of the rig. */
export interface RigStep {
  readonly comboId: Id;
  /** Absent where no session of the four weeks has a usual lap on that side. */
  readonly before: SideOfStep | undefined;
  readonly after: SideOfStep | undefined;
  readonly neither: readonly SessionOfNeither[];
  /** What happened at the change itself, practice taken out. */
  readonly step: Figure<StepAtChange>;
}

/**
 * Before and after a change of the rig, for each combo with a usual lap in the 4 weeks before and after on one page, and
 * for those that lack one because of sessions on neither side. A
 * session goes by what its runs were driven with, and by its date only where they name no rig; one driven with both is on
 * neither side, because its usual lap is of both. The medians stand for themselves; the step is that of the level
 * over all sessions of the page, which knows the breaks and the other changes (see `stepAtChange`). Not a test: the driver
 * was also practising.
 */
export function rigSteps({ combos, rigId, records, today }: RigStepsInput): RigStep[] {
  const change = records.findIndex(({ id }) => id === rigId);
  const on = records[change]?.from;
  if (on === undefined) return [];
  return combos.flatMap(({ comboId, digests, pages }) => {
    const sorted = digests.toSorted((a, b) => a.startedAt - b.startedAt);
    const sides = new Map(sorted.map((digest) => [digest.sessionId, rigSide(digest, records, change)]));
    const onPage = onPageOf(sorted, (digest) => sides.get(digest.sessionId) !== "before", pages);
    const firstAfter = onPage.findIndex(({ sessionId }) => sides.get(sessionId) === "after");
    const isMixed = ({ sessionId }: SessionDigest, index: number) =>
      sides.get(sessionId) === "both" ||
      (firstAfter >= 0 && index > firstAfter && sides.get(sessionId) === "before");
    const history = pageHistory(
      onPage.map((digest, index) => (isMixed(digest, index) ? withoutMedian(digest) : digest)),
      sorted,
    );
    const ofSide = (side: RigSide, from: CalendarDate, to: CalendarDate) =>
      sideOf(
        history.filter(({ sessionId }) => sides.get(sessionId) === side),
        from,
        to,
      );
    const before = ofSide("before", addDays(on, -daysAround), addDays(on, daysAround - 1));
    const after = ofSide("after", addDays(on, -daysAround), addDays(on, daysAround - 1));
    const neither = onPage.flatMap((digest, index): SessionOfNeither[] => {
      if (!isMixed(digest, index)) return [];
      const { sessionId, date } = digest;
      return [{ sessionId, date, why: sides.get(sessionId) === "both" ? "both" : "old again" }];
    });
    const isAround = ({ date }: SessionOfNeither) =>
      date >= addDays(on, -daysAround) && date < addDays(on, daysAround);
    if ((before === undefined || after === undefined) && !neither.some(isAround)) return [];
    const afterSession = history.filter(({ sessionId }) => sides.get(sessionId) === "before").length;
    // Another change between the same two sessions cannot be told from this one.
    const otherDays = records.filter(({ id }) => id !== rigId).map(({ from }) => from);
    const others = pageEvents(history, today, otherDays).filter(
      (event) => event.kind === "break" || event.afterSession !== afterSession,
    );
    const step = stepAtChange({ afterSession, history, events: others });
    return [{ comboId, before, after, neither, step }];
  });
}

/** The session still counts as driven; its usual lap is of no side. */
function withoutMedian(digest: SessionDigest): SessionDigest {
  return { ...digest, pace: { ...digest.pace, medianForTrend: undefined } };
}

/** The sessions of the page on which the first one with the change stands. */
function onPageOf(
  digests: readonly SessionDigest[],
  isWithChange: (digest: SessionDigest) => boolean,
  pages: readonly Pick<Page, "from">[],
): SessionDigest[] {
  const first = digests.find(isWithChange)?.startedAt ?? Number.POSITIVE_INFINITY;
  const starts = pages.map(({ from }) => from);
  const from = Math.max(Number.NEGATIVE_INFINITY, ...starts.filter((start) => start <= first));
  const to = Math.min(Number.POSITIVE_INFINITY, ...starts.filter((start) => start > first));
  return digests.filter(({ startedAt }) => startedAt >= from && startedAt < to);
}

function sideOf(
  history: readonly PageSession[],
  from: CalendarDate,
  to: CalendarDate,
): SideOfStep | undefined {
  const some = history.filter(({ date }) => date >= from && date <= to);
  const ms = median(some.map(({ medianMs }) => medianMs));
  const decimals = usualDecimals(some.map(({ medianDecimals }) => ({ decimals: medianDecimals })));
  const sessions = some.map((session) => ({
    sessionId: session.sessionId,
    date: session.date,
    usual: { ms: session.medianMs, decimals: session.medianDecimals },
  }));
  return ms === undefined ? undefined : { sessions, usual: { ms, decimals } };
}
